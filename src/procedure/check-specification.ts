import { atPath, CalculationError, describe, type Fault } from '../checks/index.js';
import { leakageArrangements, leakageConditions } from '../leakage/index.js';
import type { Bench } from './bench.js';
import type { LeakageTest, Output, Setting, SettingScale, Specification } from './specification.js';
import { standardRules } from './standard-rules.js';

/**
 * Faults between the members of a specification: identifiers that repeat, settings outside their scale, rules that
 * do not exist. Faults of single values are found where the values are used, and by the schema of the document.
 */
export function specificationFaults(specification: Specification): readonly Fault[] {
  const faults: Fault[] = [];
  if (specification.outputs.length === 0) {
    faults.push(fault('wrong-count', 'outputs', specification.outputs, 'at least one output is needed'));
  }
  faults.push(
    ...repeated(
      specification.outputs.map((output) => output.id),
      (i) => `outputs[${i}].id`,
    ),
  );
  specification.outputs.forEach((output, i) => {
    faults.push(...outputFaults(output, `outputs[${i}]`));
  });
  faults.push(...leakageFaults(specification));
  const { monitor } = specification;
  if (monitor !== undefined && monitor.rows === undefined && monitor.model === undefined) {
    faults.push(fault('missing-member', 'monitor.rows', monitor.rows, 'must be given, or model'));
  }
  const rules = specification.rules ?? [];
  rules.forEach((choice, i) => {
    const rule = Object.hasOwn(standardRules, choice.rule) ? standardRules[choice.rule] : undefined;
    if (rule === undefined) {
      const known = Object.keys(standardRules).join(', ');
      faults.push(fault('unknown-choice', `rules[${i}].rule`, choice.rule, `must be one of: ${known}`));
      return;
    }
    for (const [name, value] of Object.entries(choice.parameters ?? {})) {
      const path = `rules[${i}].parameters.${name}`;
      if (!Object.hasOwn(rule.parameters, name)) {
        const known = Object.keys(rule.parameters).join(', ') || 'none';
        faults.push(fault('unknown-choice', path, name, `must be a parameter of the rule: ${known}`));
      } else if (!(Number.isFinite(value) && value >= 0 && value <= 1)) {
        faults.push(fault('not-a-fraction', path, value, 'must be a fraction from 0 to 1'));
      }
    }
  });
  faults.push(
    ...repeated(
      rules.map((choice) => choice.rule),
      (i) => `rules[${i}].rule`,
    ),
  );
  return faults;
}

/** Faults between the members of a bench: identifiers that repeat, nothing to read or to connect. */
export function benchFaults(bench: Bench): readonly Fault[] {
  const faults: Fault[] = [];
  if (bench.loads.length === 0) faults.push(fault('wrong-count', 'loads', bench.loads, 'at least one load is needed'));
  faults.push(
    ...repeated(
      bench.loads.map((load) => load.id),
      (i) => `loads[${i}].id`,
    ),
  );
  faults.push(
    ...repeated(
      (bench.leads ?? []).map((lead) => lead.id),
      (i) => `leads[${i}].id`,
    ),
  );
  const functions = bench.instrument.reads;
  if (functions.length === 0) {
    faults.push(fault('wrong-count', 'instrument.reads', functions, 'at least one quantity is needed'));
  }
  functions.forEach((f, i) => {
    if (f.ranges.length > 0) return;
    faults.push(fault('wrong-count', `instrument.reads[${i}].ranges`, f.ranges, 'at least one range is needed'));
  });
  faults.push(
    ...repeated(
      functions.map((f) => f.quantity),
      (i) => `instrument.reads[${i}].quantity`,
    ),
  );
  if (bench.reads !== undefined && !functions.some((f) => f.quantity === bench.reads)) {
    const known = functions.map((f) => f.quantity).join(', ');
    faults.push(
      fault('unknown-choice', 'reads', bench.reads, `must be a quantity that the instrument reads: ${known}`),
    );
  }
  return faults;
}

/** Throws one error with all the faults, if there are any. */
export function refuse(faults: readonly Fault[]): void {
  const [first, ...further] = faults;
  if (first !== undefined) throw new CalculationError(first, further);
}

function outputFaults(output: Output, path: string): Fault[] {
  const { scale } = output;
  const faults: Fault[] = [];
  if (scale.kind === 'level') {
    if (scale.levels.length === 0) {
      faults.push(fault('wrong-count', `${path}.scale.levels`, scale.levels, 'at least one level is needed'));
    }
    faults.push(...repeated(scale.levels, (i) => `${path}.scale.levels[${i}]`));
  } else if (scale.minimum > scale.maximum) {
    faults.push(
      fault(
        'band-reversed',
        `${path}.scale.minimum`,
        scale.minimum,
        `must not be above the highest setting, ${scale.maximum} W`,
      ),
    );
  }
  const settings = (list: readonly { readonly setting: Setting }[] | undefined, name: string): void => {
    list?.forEach((entry, i) => {
      faults.push(...settingFaults(entry.setting, scale, `${path}.${name}[${i}].setting`));
    });
  };
  output.settings?.forEach((setting, i) => {
    faults.push(...settingFaults(setting, scale, `${path}.settings[${i}]`));
  });
  settings(output.curves, 'curves');
  settings(output.rows, 'rows');
  settings(output.points, 'points');
  faults.push(
    ...repeated(
      (output.curves ?? []).map((curve) => String(curve.setting)),
      (i) => `${path}.curves[${i}].setting`,
    ),
    ...repeated(
      (output.rows ?? []).map((row) => `${row.setting} at ${row.load} ohm`),
      (i) => `${path}.rows[${i}]`,
    ),
    ...repeated(
      (output.points ?? []).map((p) => `${p.setting} at ${p.load} ohm`),
      (i) => `${path}.points[${i}]`,
    ),
  );
  output.rows?.forEach((row, i) => {
    if (row.lower === undefined && row.upper === undefined) {
      faults.push(fault('tolerance-missing', `${path}.rows[${i}]`, row.lower, 'needs a lower or an upper limit'));
    }
  });
  return faults;
}

function leakageFaults({ leakage = [], outputs }: Specification): Fault[] {
  const faults = repeated(
    leakage.map((test) => test.id),
    (i) => `leakage[${i}].id`,
  );
  leakage.forEach((test, i) => {
    const path = `leakage[${i}]`;
    const output = outputs.find(({ id }) => id === test.output);
    if (output === undefined) {
      const known = outputs.map(({ id }) => id).join(', ');
      faults.push(fault('unknown-choice', `${path}.output`, test.output, `must be an output of the sheet: ${known}`));
      return;
    }
    faults.push(...settingFaults(test.setting, output.scale, `${path}.setting`));
    const arrangement = Object.hasOwn(leakageArrangements, test.arrangement)
      ? leakageArrangements[test.arrangement]
      : undefined;
    if (arrangement !== undefined && arrangement.circuit !== output.circuit) {
      const requirement = `must be an arrangement of a ${output.circuit} output`;
      faults.push(fault('contradiction', `${path}.arrangement`, test.arrangement, requirement));
    }
    if (arrangement !== undefined) faults.push(...conditionFaults(test, path));
  });
  return faults;
}

/** What is wrong with the states of the output that a test asks for. */
function conditionFaults({ arrangement, loading }: LeakageTest, path: string): readonly Fault[] {
  try {
    atPath(path, () => leakageConditions(arrangement, loading));
    return [];
  } catch (error) {
    if (error instanceof CalculationError) return error.faults;
    throw error;
  }
}

function settingFaults(setting: Setting, scale: SettingScale, path: string): Fault[] {
  if (scale.kind === 'level') {
    if (typeof setting === 'string' && scale.levels.includes(setting)) return [];
    return [fault('level-unknown', path, setting, `must be one of the levels: ${scale.levels.join(', ')}`)];
  }
  if (typeof setting !== 'number') {
    return [fault('not-a-number', path, setting, 'must be a setting in watts, because the scale is in watts')];
  }
  if (setting >= scale.minimum && setting <= scale.maximum) return [];
  return [fault('setting-outside-scale', path, setting, `must be from ${scale.minimum} to ${scale.maximum} W`)];
}

function repeated(values: readonly string[], path: (index: number) => string): Fault[] {
  const seen = new Set<string>();
  const faults: Fault[] = [];
  values.forEach((value, i) => {
    if (seen.has(value)) faults.push(fault('duplicate', path(i), value, 'must differ from those before it'));
    seen.add(value);
  });
  return faults;
}

function fault(code: Fault['code'], path: string, received: unknown, requirement: string): Fault {
  return { code, path, received: describe(received), requirement };
}
