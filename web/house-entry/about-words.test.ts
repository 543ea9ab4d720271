import { describe, expect, it } from 'vitest';
import { recordList } from '../house-found/record-desk.ts';
import { isMarked } from './about-words.ts';
import { documentForm, type Form } from './form.ts';
import { choiceWords } from './labels.ts';

/** Every form inside one, itself first. */
const formsIn = (form: Form): readonly Form[] => {
  const inner =
    form.kind === 'object'
      ? form.fields.map((field) => field.form)
      : form.kind === 'kinds'
        ? Object.values(form.kinds)
        : form.kind === 'list' || form.kind === 'record'
          ? [form.of]
          : [];
  return [form, ...inner.flatMap(formsIn)];
};

const forms = [
  documentForm('house'),
  recordList('sets', 'restraints'),
  recordList('galleries', 'reserved'),
].flatMap(formsIn);

describe('what the forms say in another language', () => {
  it('has the help of every field, as the schema has it', () => {
    const abouts = forms.flatMap((form) =>
      form.kind === 'object' ? form.fields.map(({ about }) => about) : [],
    );
    expect(abouts.length).toBeGreaterThan(200);
    expect(abouts.filter((about) => about !== '' && !isMarked(about))).toEqual([]);
  });

  it('has words of its own for every choice but the bases, which are said elsewhere', () => {
    const choices = forms.flatMap((form) => (form.kind === 'choice' ? form.options : []));
    expect(choices.length).toBeGreaterThan(30);
    expect(choices.filter((choice) => choiceWords(choice) === choice)).toEqual([
      ...choices.filter((choice) =>
        ['motor', 'hemp', 'winch', 'in', 'out', 'clips'].includes(choice),
      ),
    ]);
  });
});
