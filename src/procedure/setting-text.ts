import { formatQuantity } from '../units/index.js';
import type { Setting, SettingScale } from './specification.js';

/** A setting as text: `120 W`, or the level's name. */
export function settingText(setting: Setting): string {
  return typeof setting === 'number' ? formatQuantity(setting, 'W', { prefix: 'none' }) : setting;
}

/** Place of a setting on its scale, for sorting from low to high: watts, or the index of the level. */
export function settingRank(setting: Setting, scale: SettingScale): number {
  if (scale.kind === 'level') return scale.levels.indexOf(String(setting));
  return typeof setting === 'number' ? setting : Number.NaN;
}
