import type { Warning } from '../checks/index.js';
import { atPath, requireNonNegative } from '../checks/index.js';
import {
  type BoxAccuracy,
  challengesFor,
  type Monitor,
  type MonitorChallenge,
  type SweepChallenge,
} from '../monitor/index.js';
import { formatQuantity } from '../units/index.js';
import type { Bench } from './bench.js';
import type { Plan, PlanChallenge, PlanMonitorRow, PlanMonitorThresholds, PlanSweepChallenge } from './plan.js';
import type { MonitorSpecification } from './specification.js';
import { sweepAcceptance } from './sweep-acceptance.js';

/** What a plan says of the monitor. */
export interface PlannedMonitor {
  readonly rows: readonly PlanMonitorRow[];
  readonly thresholds?: PlanMonitorThresholds;
  readonly warnings: readonly Warning[];
}

/** Resistance readings of the sheet, and the challenges that verify its thresholds with the box of the bench. */
export function planMonitor(
  monitor: MonitorSpecification | undefined,
  bench: Bench,
  plan: Pick<Plan, 'options'>,
): PlannedMonitor {
  if (monitor === undefined) return { rows: [], warnings: [] };
  const { connection, rows = [], model } = monitor;
  const stated: PlanMonitorRow[] = rows.map((row, i) => ({ number: i + 1, connection, ...row }));
  if (model === undefined) return { rows: stated, warnings: [] };
  if (bench.resistanceBox === undefined) {
    const message = 'The bench states no resistance box: the thresholds of the monitor are not challenged.';
    return { rows: stated, warnings: [{ code: 'box-not-on-bench', message }] };
  }
  if (bench.timing !== undefined) requireNonNegative(bench.timing.limits, 'bench.timing.limits');
  const { name: _, ...box } = bench.resistanceBox;
  const atBench = monitorAtBench(model, bench);
  const found = atPath('monitor.model', () => challengesFor(atBench, box));
  const readings = found.challenges.filter((challenge) => challenge.kind === 'reading');
  // A row of the sheet goes before one that follows from the tolerance of the display.
  const further = readings.filter(({ set, limits }) => limits !== undefined && !rows.some((row) => row.set === set));
  const added = further.map(({ set, limits }, i) => ({ number: stated.length + i + 1, connection, set, ...limits }));
  const challenges = found.challenges
    .filter((challenge) => challenge.kind !== 'reading')
    .map(
      (challenge, i): PlanChallenge => ({
        id: `monitor/${i + 1}`,
        number: i + 1,
        ...challenge,
        instruction: instructionOf(challenge),
        ...(challenge.kind === 'sweep' ? findsOf(plan, atBench, box.accuracy, challenge) : {}),
      }),
    );
  return {
    rows: [...stated, ...added],
    thresholds: {
      connection,
      challenges,
      thresholds: found.thresholds,
      cautions: found.cautions,
      warnings: [...found.warnings, ...emptyWarnings(challenges), ...timingWarning(plan, bench, model)],
    },
    warnings: [],
  };
}

/** The monitor with the lead and the fixture of this bench. */
export function monitorAtBench(model: Monitor, { fixture }: Bench): Monitor {
  return fixture === undefined ? model : { ...model, series: fixture };
}

function findsOf(
  plan: Pick<Plan, 'options'>,
  monitor: Monitor,
  accuracy: BoxAccuracy,
  challenge: SweepChallenge,
): Pick<PlanSweepChallenge, 'finds'> {
  const finds = sweepAcceptance(plan, monitor, accuracy, challenge);
  return finds === undefined ? {} : { finds };
}

/** Sweeps whose steps and box leave no trip point that the rule accepts. */
function emptyWarnings(challenges: readonly PlanChallenge[]): Warning[] {
  return challenges.flatMap((challenge): Warning[] => {
    if (challenge.kind !== 'sweep' || challenge.finds?.acceptance !== null) return [];
    const message = `Challenge ${challenge.number}: with these steps and this box the decision rule accepts no trip point. Use finer steps or a better box.`;
    return [{ code: 'acceptance-empty', message }];
  });
}

/** Response times that the rule will not be able to judge. */
function timingWarning({ options }: Pick<Plan, 'options'>, { timing }: Bench, { alarmDelay }: Monitor): Warning[] {
  if (options.decisionRule.kind === 'simple-acceptance' || timing !== undefined || alarmDelay === undefined) return [];
  const message = 'The bench does not state how well response times are taken: the decision rule cannot judge them.';
  return [{ code: 'rule-not-applicable', message }];
}

type AlarmOrSweep = Exclude<MonitorChallenge, { kind: 'reading' }>;

/** What to do, in a sentence. */
function instructionOf(challenge: AlarmOrSweep): string {
  const { baseline, wait } = challenge;
  const first = baseline === undefined ? '' : `Start with ${ohms(baseline)} until the monitor accepts it. `;
  const patience = wait === null ? '' : ` Wait ${formatQuantity(wait, 's')}.`;
  if (challenge.kind === 'sweep') {
    const values = challenge.values.map((value) => ohms(value)).join(', ');
    return `${first}Set one after the other, and write down at each whether it alarms: ${values}.${patience}`;
  }
  const what =
    challenge.set === 'open'
      ? 'Open the circuit'
      : `Set ${challenge.set === 0 ? 'a short circuit' : ohms(challenge.set)}`;
  const must = challenge.kind === 'must-alarm' ? 'It must alarm' : 'It must not alarm';
  return `${first}${what}. ${must}.${patience}`;
}

function ohms(value: number): string {
  // A multiple of a decimal step is printed as it is dialled.
  return formatQuantity(Number(value.toPrecision(12)), 'ohm');
}
