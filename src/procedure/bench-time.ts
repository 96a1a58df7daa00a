import type { Bench } from './bench.js';
import type { BenchTime, PlanLeakage, PlanPoint } from './plan.js';

/** Times that stand where the bench states none, in seconds. Assumptions, no source: state your own. */
export const defaultBenchTimes = { connect: 120, changeLoad: 30, changeSetting: 10, read: 15 } as const;

/** Estimated time at the bench for points in the order of work, activations, pauses and leakage included. */
export function benchTime(bench: Bench, points: readonly PlanPoint[], leakage: readonly PlanLeakage[]): BenchTime {
  const each = { ...defaultBenchTimes, ...bench.times };
  let connections = 0;
  let loads = 0;
  let settings = 0;
  let pauses = 0;
  let before: PlanPoint | undefined;
  const used = points.filter((point) => point.feasible);
  for (const point of used) {
    if (before?.connection !== point.connection || before.lead !== point.lead) connections++;
    if (before?.load?.id !== point.load?.id) loads++;
    if (before?.output !== point.output || before.setting !== point.setting) settings++;
    // The pause runs while the reading is written down and the next point is set.
    pauses += Math.max(0, (point.activation.pause ?? 0) - each.changeSetting);
    before = point;
  }
  // The measuring resistor stays at an electrode while only the load of the output changes.
  const connected = leakage.filter(({ test, measuredFrom }, i) => {
    const last = leakage[i - 1];
    return last === undefined || test === undefined || last.test !== test || last.measuredFrom !== measuredFrom;
  });
  const parts = [
    { what: 'connections', count: connections, each: each.connect },
    { what: 'changes of load', count: loads, each: each.changeLoad },
    { what: 'changes of setting or mode', count: settings, each: each.changeSetting },
    { what: 'activations and readings', count: used.length, each: each.read },
    { what: 'leakage connections', count: connected.length, each: each.connect },
    { what: 'changes of load for leakage', count: leakage.length - connected.length, each: each.changeLoad },
    { what: 'leakage readings', count: leakage.length, each: each.read },
    { what: 'pauses beyond that', count: 1, each: pauses },
  ].filter((part) => part.count > 0 && part.each > 0);
  return { total: parts.reduce((sum, part) => sum + part.count * part.each, 0), parts };
}
