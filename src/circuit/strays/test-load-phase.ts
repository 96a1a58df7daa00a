import { fail, requirePositive } from '../../checks/index.js';
import type { SourceId, Standing } from '../../working/index.js';

/**
 * The largest phase angle of a test load, from 10 kHz to five times the fundamental: 8.5°, from memory.
 * Check your copy of the standard; every function that uses it takes another.
 */
export const testLoadPhase: {
  readonly phase: number;
  readonly standing: Standing;
  readonly source: SourceId;
} = { phase: (8.5 * Math.PI) / 180, standing: 'from memory', source: 'iec-60601-2-2-memory' };

/** Tangent of a phase above 0 and below a right angle; that of a test load unless stated. */
export function tangentOf(phase: number = testLoadPhase.phase): number {
  requirePositive(phase, 'phase');
  if (phase >= Math.PI / 2) {
    fail(
      'out-of-range',
      'phase',
      phase,
      'must be below π/2',
      phase <= 90 ? `If ${phase}° is meant, give radians.` : undefined,
    );
  }
  return Math.tan(phase);
}
