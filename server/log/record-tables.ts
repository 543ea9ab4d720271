/**
 * Tables of the record, one step of the schema and never changed. What is written in them stays:
 * the database itself refuses to change or delete an event, an answer or a revision, to write an
 * event out of its order, and to write anything into a copy that nobody has made the record.
 */
const never = (table: string, words: string): string =>
  (['UPDATE', 'DELETE'] as const)
    .map(
      (act) => `CREATE TRIGGER ${table}_no_${act.toLowerCase()} BEFORE ${act} ON ${table}
     BEGIN SELECT RAISE(ABORT, '${words}'); END;`,
    )
    .join('\n   ');

const onlyInRecord = (table: string): string =>
  `CREATE TRIGGER ${table}_only_in_record BEFORE INSERT ON ${table}
     WHEN (SELECT is_record FROM identity) = 0
     BEGIN SELECT RAISE(ABORT, 'a copy is read only until a person makes it the record'); END;`;

export const RECORD_TABLES = `CREATE TABLE identity (
     one INTEGER PRIMARY KEY CHECK (one = 1),
     house_key TEXT NOT NULL,
     record_key TEXT NOT NULL,
     is_record INTEGER NOT NULL CHECK (is_record IN (0, 1)),
     place TEXT NOT NULL,
     why TEXT NOT NULL
   ) STRICT;
   CREATE TABLE event (
     seq INTEGER PRIMARY KEY,
     id TEXT NOT NULL UNIQUE,
     at_ms INTEGER NOT NULL,
     kind TEXT NOT NULL,
     target TEXT NOT NULL,
     by TEXT,
     device TEXT,
     command_id TEXT UNIQUE,
     payload TEXT NOT NULL,
     withdraws INTEGER UNIQUE REFERENCES event (seq),
     previous TEXT NOT NULL,
     hash TEXT NOT NULL UNIQUE
   ) STRICT;
   CREATE INDEX event_on_target ON event (target, seq);
   CREATE TABLE answer (
     command_id TEXT PRIMARY KEY,
     body_hash TEXT NOT NULL,
     answer TEXT NOT NULL
   ) STRICT;
   CREATE TRIGGER event_in_order BEFORE INSERT ON event
     WHEN NEW.seq <> (SELECT COALESCE(MAX(seq), 0) + 1 FROM event)
     BEGIN SELECT RAISE(ABORT, 'an event is written after the last one'); END;
   ${never('event', 'an event is never changed')}
   ${never('answer', 'an answer is given once')}
   ${never('revision', 'a revision is never changed')}
   ${never('shelving', 'what was set aside stays noted')}
   ${['event', 'answer', 'revision', 'shelving'].map(onlyInRecord).join('\n   ')}`;
