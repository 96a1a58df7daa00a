import { fail, requireNonNegative, type Warning } from '../checks/index.js';

/** Resistances that were set one after the other, and whether the monitor alarmed. */
export interface MonitorSweep {
  /** Steps in the order of setting: the set values only rise, or only fall. At least two. */
  readonly steps: readonly { readonly set: number; readonly alarm: boolean }[];
  /** The baseline that was set first, in ohms: the sweep then challenges the rise, no limit of the window. */
  readonly baseline?: number;
  /** Time from setting the value that tripped to the alarm, in seconds, where it was taken. */
  readonly responseTime?: number;
}

/** A change from silence to alarm or back. */
export interface SweepEvent {
  readonly event: 'trip' | 'release';
  readonly limit: 'lower' | 'upper' | 'rise';
  readonly baseline: number | undefined;
  /** The set values between which it lies, in ohms, in the order of setting. */
  readonly before: number;
  readonly at: number;
  readonly responseTime: number | undefined;
}

/** A sweep in which nothing changed: a finding, not an error. */
export interface UnchangedSweep {
  /** Index of the sweep. */
  readonly sweep: number;
  /** `never-trips`: silent throughout. `never-releases`: in alarm throughout. */
  readonly finding: 'never-trips' | 'never-releases';
  /** The limit towards which a silent sweep goes, or from which one in alarm comes back. */
  readonly limit: 'lower' | 'upper' | 'rise';
  readonly baseline?: number;
  /** The last value that was set, in ohms: what was looked for lies beyond it. */
  readonly last: number;
}

/** What the sweeps show, before anything is calculated from it. */
export interface SweepEvents {
  readonly events: readonly SweepEvent[];
  readonly unchanged: readonly UnchangedSweep[];
  readonly warnings: readonly Warning[];
}

/** The first trip and the first release of each sweep; going up the upper limit trips and the lower one releases. */
export function sweepEvents(sweeps: readonly MonitorSweep[]): SweepEvents {
  if (sweeps.length === 0) fail('wrong-count', 'sweeps', sweeps, 'must have at least one sweep');
  const events: SweepEvent[] = [];
  const unchanged: UnchangedSweep[] = [];
  const warnings: Warning[] = [];
  sweeps.forEach((sweep, index) => {
    const { steps, baseline, responseTime } = sweep;
    const isUp = directionOf(sweep, `sweeps[${index}]`);
    const limitOf = (isTrip: boolean) => (isTrip === isUp ? (baseline === undefined ? 'upper' : 'rise') : 'lower');
    const changes = steps.flatMap(({ alarm }, i) => (i > 0 && alarm !== steps[i - 1]?.alarm ? [i] : []));
    for (const event of ['trip', 'release'] as const) {
      const isTrip = event === 'trip';
      const [first, ...further] = changes.filter((i) => steps[i]?.alarm === isTrip);
      if (first === undefined) continue;
      const [before, at] = [steps[first - 1]?.set as number, steps[first]?.set as number];
      events.push({
        event,
        limit: limitOf(isTrip),
        baseline,
        before,
        at,
        responseTime: isTrip ? responseTime : undefined,
      });
      if (further.length > 0) {
        const message = `Sweep ${index + 1} has more than one ${event}: the first, between ${before} and ${at} ohm, counts.`;
        warnings.push({ code: 'sweep-chatters', message });
      }
    }
    if (changes.length > 0) return;
    const isSilent = steps[0]?.alarm === false;
    unchanged.push({
      sweep: index,
      finding: isSilent ? 'never-trips' : 'never-releases',
      limit: limitOf(isSilent),
      ...(baseline === undefined ? {} : { baseline }),
      last: steps.at(-1)?.set as number,
    });
  });
  return { events, unchanged, warnings };
}

/** Whether a checked sweep goes up. */
function directionOf({ steps, baseline, responseTime }: MonitorSweep, path: string): boolean {
  if (steps.length < 2) fail('wrong-count', `${path}.steps`, steps, 'must have at least two steps');
  steps.forEach(({ set, alarm }, i) => {
    requireNonNegative(set, `${path}.steps[${i}].set`);
    if (typeof alarm !== 'boolean') fail('wrong-type', `${path}.steps[${i}].alarm`, alarm, 'must be true or false');
  });
  if (baseline !== undefined) requireNonNegative(baseline, `${path}.baseline`);
  if (responseTime !== undefined) requireNonNegative(responseTime, `${path}.responseTime`);
  const isUp = (steps[1]?.set as number) > (steps[0]?.set as number);
  for (let i = 1; i < steps.length; i++) {
    const [previous, set] = [steps[i - 1]?.set as number, steps[i]?.set as number];
    if (isUp ? set > previous : set < previous) continue;
    const way = isUp ? 'greater' : 'less';
    fail('sweep-turns', `${path}.steps[${i}].set`, set, `must be ${way} than the value before it, ${previous}`);
  }
  return isUp;
}
