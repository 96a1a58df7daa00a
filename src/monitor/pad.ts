import { atPath, fail, requireFraction, requireNonNegative, requirePositive } from '../checks/index.js';

/** Contact of one foil with the skin: a resistance with a capacitance across it. */
export interface PadContact {
  /** Contact resistance of the whole foil, in ohms. */
  readonly resistance: number;
  /** Contact capacitance of the whole foil, in farads; 0 unless stated. */
  readonly capacitance?: number;
  /** Part of the foil that is in contact, as a fraction above 0; 1 unless stated. */
  readonly area?: number;
}

/** A split neutral electrode on a patient, as the monitor meets it: contact, tissue and contact in series. */
export interface SplitPad {
  readonly contacts: readonly [PadContact, PadContact];
  /** Resistance of the tissue between the foils, with that of the lead, in ohms. */
  readonly tissue: number;
}

/** At which frequency and as what a monitor reads an impedance. */
export interface PadReading {
  /** Frequency of the monitor, in hertz. */
  readonly frequency: number;
  /** Whether it reads the magnitude of the impedance or its resistive part. */
  readonly reads: 'magnitude' | 'resistance';
}

/** A contact with everything stated. */
export type WholeContact = Required<PadContact>;

/** Both contacts, checked and complete. */
export function requirePad({ contacts, tissue }: SplitPad): readonly [WholeContact, WholeContact] {
  if (!Array.isArray(contacts) || contacts.length !== 2) {
    fail('wrong-count', 'contacts', contacts, 'must be two: a split electrode has two foils');
  }
  requireNonNegative(tissue, 'tissue');
  const [first, second] = contacts;
  return [atPath('contacts[0]', () => requireContact(first)), atPath('contacts[1]', () => requireContact(second))];
}

function requireContact({ resistance, capacitance = 0, area = 1 }: PadContact): WholeContact {
  requirePositive(resistance, 'resistance');
  requireNonNegative(capacitance, 'capacitance');
  requireFraction(requirePositive(area, 'area'), 'area');
  return { resistance, capacitance, area };
}
