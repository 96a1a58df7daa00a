import type { MonitorFinding, MonitorReading } from '../../procedure/index.js';

/**
 * The rows of the monitor that somebody read, or should have: a row that stands for the unit as left without having
 * been read again would say what nobody saw.
 */
export function monitorRowsRead(
  findings: readonly MonitorFinding[],
  readings: readonly MonitorReading[],
): readonly MonitorFinding[] {
  const again = readings.filter((reading) => reading.phase === 'as-left');
  const asFound = new Set(findings.filter((finding) => finding.phase === 'as-found').map((finding) => finding.number));
  return findings.filter(
    ({ phase, number, set }) =>
      phase === 'as-found' || !asFound.has(number) || again.some((reading) => reading.set === set),
  );
}
