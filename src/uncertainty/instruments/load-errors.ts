import { fail, requireFinite, requireFraction, requireNonNegative, requirePositive } from '../../checks/index.js';
import { certificateInput } from '../inputs/certificate-input.js';
import { rectangularInput } from '../inputs/rectangular-input.js';
import type { UncertainInput } from '../uncertain-input.js';

/** What is known of a load's resistance. */
export interface LoadStatement {
  /** Resistance, in ohms. */
  readonly resistance: number;
  /** Relative limits of the resistance, where no certificate states more. */
  readonly tolerance?: number;
  /** Expanded uncertainty from a certificate, in ohms, with its coverage. */
  readonly certificate?: {
    readonly expandedUncertainty: number;
    readonly coverage: { readonly factor: number } | { readonly level: number };
  };
  /** Warming: temperature coefficient in 1/K, and the highest rise above the temperature of the value, in kelvins. */
  readonly temperature?: { readonly coefficient: number; readonly rise: number };
  /** Relative limits of the effect of strays and leads at the carrier. */
  readonly strays?: number;
}

/**
 * The errors of a load's resistance, relative to it: inputs of value 0 and unit 1.
 *
 * @param load What is known of the load
 * @returns Inputs `load`, `loadTemperature`, `strays`, as far as they are stated
 * @throws CalculationError `not-positive`, `not-a-fraction`, `negative`, `wrong-count` (tolerance and certificate both)
 * @source JCGM 100:2008, 4.3; the resistance rises linearly with temperature
 * @example
 * ```ts
 * import { loadErrors } from 'esu-limits/uncertainty';
 * loadErrors({ resistance: 500, tolerance: 0.01 })['load']?.standardUncertainty.toFixed(6); // → "0.005774"
 * ```
 */
export function loadErrors(load: LoadStatement): Readonly<Record<string, UncertainInput>> {
  requirePositive(load.resistance, 'resistance');
  const errors: Record<string, UncertainInput> = {};
  const naming = (description: string) => ({ description, unit: '1' });
  if (load.tolerance !== undefined && load.certificate !== undefined) {
    fail('wrong-count', 'tolerance', load.tolerance, 'must be absent where a certificate is given');
  }
  if (load.certificate !== undefined) {
    const { expandedUncertainty, coverage } = load.certificate;
    requireNonNegative(expandedUncertainty, 'certificate.expandedUncertainty');
    const relative = expandedUncertainty / load.resistance;
    errors['load'] = certificateInput(
      { value: 0, expandedUncertainty: relative, coverage },
      naming('resistance of the load'),
    );
  } else if (load.tolerance !== undefined) {
    requireFraction(load.tolerance, 'tolerance');
    errors['load'] = rectangularInput({ value: 0, halfWidth: load.tolerance }, naming('resistance of the load'));
  }
  if (load.temperature !== undefined) {
    const { coefficient, rise } = load.temperature;
    requireFinite(coefficient, 'temperature.coefficient');
    requireNonNegative(rise, 'temperature.rise');
    // Anywhere between cold and the full rise: the half-width is half of the change, and its middle is corrected for.
    const change = coefficient * rise;
    errors['loadTemperature'] = {
      ...rectangularInput({ value: 0, halfWidth: Math.abs(change) / 2 }, naming('warming of the load')),
      value: change / 2,
    };
  }
  if (load.strays !== undefined) {
    requireFraction(load.strays, 'strays');
    errors['strays'] = rectangularInput({ value: 0, halfWidth: load.strays }, naming('strays and leads'));
  }
  return errors;
}
