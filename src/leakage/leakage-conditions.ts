import { fail, requireChoice } from '../checks/index.js';
import {
  type LeakageArrangementId,
  type LeakageElectrode,
  type LeakageLoading,
  leakageArrangements,
  leakageLoadings,
} from './leakage-arrangements.js';

/** One measurement of an arrangement: what is measured, with what between the electrodes. */
export interface LeakageCondition {
  /** From where the measuring resistor goes to earth. */
  readonly measuredFrom: LeakageElectrode;
  /** What is between the electrodes meanwhile; absent where the arrangement has one load only. */
  readonly loading?: LeakageLoading;
}

/**
 * The measurements that an arrangement asks for: each electrode by itself, and each state of the output by itself. One
 * of them says nothing of the others.
 *
 * @param arrangement Arrangement
 * @param loading States of the output to measure in, where the maker's procedure asks for others than the arrangement
 * @returns Measurements in the order of work: electrodes are changed least
 * @throws CalculationError `unknown-choice`, `wrong-count` (none), `duplicate`, `contradiction` (the arrangement has a
 * load of its own)
 * @source IEC 60601-2-2, HF leakage; from memory: check your copy of the standard
 * @example
 * ```ts
 * import { leakageConditions } from 'esu-limits/leakage';
 * leakageConditions('isolated', ['rated-load']);
 * // → [
 * //   { measuredFrom: "active electrode", loading: "rated-load" },
 * //   { measuredFrom: "neutral electrode", loading: "rated-load" },
 * // ]
 * leakageConditions('bipolar').length; // → 4
 * leakageConditions('earth-referenced-load-to-earth'); // → [{ measuredFrom: "neutral electrode" }]
 * ```
 */
export function leakageConditions(
  arrangement: LeakageArrangementId,
  loading?: readonly LeakageLoading[],
): readonly LeakageCondition[] {
  requireChoice(arrangement, 'arrangement', Object.keys(leakageArrangements) as LeakageArrangementId[]);
  const { measuredFrom, alsoUnloaded } = leakageArrangements[arrangement];
  loading?.forEach((state, i) => {
    requireChoice(state, `loading[${i}]`, leakageLoadings);
    if (loading.indexOf(state) < i) fail('duplicate', `loading[${i}]`, state, 'must differ from those before it');
  });
  if (loading?.length === 0) fail('wrong-count', 'loading', loading, 'must have at least one entry');
  if (!alsoUnloaded) {
    if (loading !== undefined) {
      fail('contradiction', 'loading', loading, 'must be absent: the load of this arrangement is part of it');
    }
    return measuredFrom.map((electrode) => ({ measuredFrom: electrode }));
  }
  return measuredFrom.flatMap((electrode) =>
    (loading ?? leakageLoadings).map((state) => ({ measuredFrom: electrode, loading: state })),
  );
}
