import type { PlanLeakage } from '../../procedure/index.js';

/** What a measurement of leakage is taken from, and with what between the electrodes: `active electrode, unloaded`. */
export function measuredFromText({ measuredFrom, loading }: PlanLeakage): string | undefined {
  const parts = [measuredFrom, loading?.replace('-', ' ')].filter((part) => part !== undefined);
  return parts.length === 0 ? undefined : parts.join(', ');
}
