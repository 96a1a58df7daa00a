import { atPath, type Warning } from '../checks/index.js';
import { assessTrace } from './assess-trace.js';
import { checkTrace } from './check-trace.js';
import type { TraceFindings } from './findings.js';
import type { Plan } from './plan.js';
import type { MonitorTrace, Phase } from './readings.js';

/** Every trace against the stated monitor, and why one could not be judged. */
export function traceFindings(
  plan: Plan,
  traces: readonly MonitorTrace[],
): { readonly found: readonly TraceFindings[]; readonly warnings: readonly Warning[] } {
  const made = traces.map((trace, i) =>
    atPath(`monitorTraces[${i}]`, () => {
      checkTrace(trace);
      return assessTrace(plan, trace, i + 1);
    }),
  );
  return {
    found: made.filter((entry): entry is TraceFindings => 'rows' in entry),
    warnings: made.filter((entry): entry is Warning => 'message' in entry),
  };
}

/** Traces that speak of a state of the unit: as left those as found, where none was recorded again. */
export function tracesOfState(traces: readonly TraceFindings[], phase: Phase): readonly TraceFindings[] {
  const own = traces.filter((trace) => trace.phase === phase);
  return own.length > 0 || phase === 'as-found' ? own : traces;
}
