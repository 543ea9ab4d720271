import { assess, type SetAssessment } from '#assessment';
import { type Finding, type Level, worstLevel } from '#findings';
import type { House } from '#house';
import { formatImbalance, formatMass, type UnitSystem } from '#quantities';
import { judge, momentToJudge } from '#rules';
import { sayFinding } from '#sheets';
import { EXIT, type ExitCode } from './exit-codes.ts';
import { openDocuments } from './open-documents.ts';
import { COMMAND_REFUSALS } from './refusal-codes.ts';
import { sayRefusals, type Voice } from './voice.ts';

export type CheckOptions = {
  readonly house: string;
  readonly show: string;
  readonly state?: string;
  readonly json?: boolean;
  readonly set?: string;
};

/** Works a show in a house and says every finding, the gravest first. */
export const check = async (voice: Voice, options: CheckOptions): Promise<ExitCode> => {
  const opened = await openDocuments(voice, { ...options, state: options.state });
  if (opened === null) return EXIT.badInput;
  const { house } = opened.house;
  const { show } = opened.show;
  const state = opened.state?.state ?? null;
  if (options.set !== undefined && !house.lineSets.some(({ id }) => id === options.set)) {
    const accepted = house.lineSets.map(({ id }) => id).join(', ');
    sayRefusals(voice, '--set', [
      { code: COMMAND_REFUSALS.noSet.code, path: '', found: options.set, accepted },
    ]);
    return EXIT.badInput;
  }
  const assessment = assess(house, show, state);
  const wanted = <T extends { readonly set?: string }>(place: T): boolean =>
    options.set === undefined || place.set === options.set;
  const nowMs = momentToJudge(house, state, Date.now());
  const findings = judge(house, show, state, assessment, { nowMs }).filter(({ at }) => wanted(at));
  const sets = assessment.sets.filter(({ lineSet }) => wanted({ set: lineSet.id }));
  voice.out(
    options.json === true
      ? `${JSON.stringify({ sets: sets.map(summaryOf), findings }, null, 2)}\n`
      : `${house.demo ? 'DEMO: an invented house and show\n' : ''}${said(house, sets, findings)}`,
  );
  return worstLevel(findings) === 'stop' ? EXIT.stop : EXIT.clear;
};

const summaryOf = ({ lineSet, hang, hung, plan }: SetAssessment) => ({
  set: lineSet.id,
  hangs: hang?.name ?? null,
  hungKg: hung.known ? hung.value.withoutLoom : null,
  needs: plan.known ? [] : plan.needs,
  bricks: plan.known
    ? Object.fromEntries(plan.value.stack.show.map(({ kind, count }) => [kind, count]))
    : null,
  chosenBy: plan.known ? plan.value.stack.chosenBy : null,
  arborKg: plan.known ? plan.value.stack.arborMass : null,
  stackM: plan.known ? plan.value.stack.height : null,
  trims: plan.known
    ? plan.value.trims.map(({ trim, height, imbalance }) => ({
        trim: trim.name,
        heightM: height,
        imbalanceN: imbalance,
      }))
    : [],
});

const ORDER: readonly Level[] = ['stop', 'caution', 'note'];

const said = (
  house: House,
  sets: readonly SetAssessment[],
  findings: readonly Finding[],
): string => {
  const lines = sets.filter(({ hang }) => hang !== null).map((set) => setLine(set, house.units));
  const words = ORDER.flatMap((level) =>
    findings
      .filter((finding) => finding.level === level)
      .map((finding) => {
        const { word, sentence } = sayFinding(finding, house);
        const place = finding.at.set === undefined ? 'house' : `set ${finding.at.set}`;
        return `${word.padEnd(8)} ${place.padEnd(8)} ${sentence} [${finding.code}]`;
      }),
  );
  const counts = ORDER.map(
    (level) => `${findings.filter((finding) => finding.level === level).length} ${level}`,
  ).join(', ');
  const last = `Findings: ${counts}. NOT AN ORDER OF WORK.`;
  return `${[...lines, '', ...words, '', last].join('\n')}\n`;
};

const setLine = ({ lineSet, hang, hung, plan }: SetAssessment, units: UnitSystem): string => {
  const mass = hung.known ? formatMass(hung.value.withoutLoom, units, { round: 'up' }) : 'unknown';
  const head = `${lineSet.id.padStart(4)}  ${(hang?.name ?? '').padEnd(30)} ${mass.padStart(9)}`;
  if (!plan.known) return `${head}  ${plan.needs.join('; ')}`;
  const { stack, trims } = plan.value;
  const bricks = stack.show.map(({ kind, count }) => `${count} ${kind}`).join(' + ') || 'none';
  const balance = trims
    .map(({ trim, imbalance }) => `${trim.name}: ${formatImbalance(imbalance, units, {})}`)
    .join(', ');
  return `${head}  ${bricks.padEnd(12)} ${balance}`;
};
