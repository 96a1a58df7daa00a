import { describe, expect, it } from 'vitest';
import type { CalculationErrorCode, Fault } from '../../src/checks/index.js';
import { CalculationError } from '../../src/checks/index.js';
import {
  parseSpecification,
  safeParseBench,
  safeParseReadings,
  safeParseSpecification,
} from '../../src/schema/index.js';
import { fixture, spoilt } from './fixtures.js';

/** Place that is spoilt, value that is put there, code of the one fault, its path where it differs, words of the hint. */
type Row = readonly [
  place: string,
  value: unknown,
  code: CalculationErrorCode,
  path?: string | undefined,
  hint?: string,
];

const parsers = { specification: safeParseSpecification, bench: safeParseBench, readings: safeParseReadings };

function faultsOf(name: keyof typeof parsers, tree: unknown): readonly Fault[] {
  const result = parsers[name](tree);
  return result.ok ? [] : result.faults;
}

function eachRow(name: keyof typeof parsers, rows: readonly Row[]): void {
  for (const [place, value, code, path = place, hint] of rows) {
    it(`${place} = ${JSON.stringify(value) ?? String(value)} is ${code}`, () => {
      const faults = faultsOf(name, spoilt(`${name}-text.json`, place, value));
      expect(faults.map((fault) => [fault.code, fault.path])).toEqual([[code, path]]);
      expect(faults[0]?.requirement).toMatch(/\S/);
      if (hint !== undefined) expect(faults[0]?.hint).toContain(hint);
    });
  }
}

describe('a specification', () => {
  const cut = 'outputs[0]';
  const bipolar = 'outputs[1]';
  const curve = `${cut}.curves[0]`;

  describe('with a number that cannot be', () => {
    eachRow('specification', [
      [`${cut}.ratedPower`, -160, 'not-positive'],
      [`${cut}.ratedPower`, 0, 'not-positive'],
      [`${cut}.ratedPower`, '0 W', 'not-positive'],
      [`${cut}.ratedPower`, '-160 W', 'not-positive'],
      [`${cut}.ratedPower`, Number.NaN, 'not-a-number'],
      [`${cut}.ratedPower`, Number.POSITIVE_INFINITY, 'not-a-number'],
      [`${cut}.ratedLoad`, -500, 'not-positive'],
      [`${cut}.ratedLoad`, 0, 'not-positive'],
      [`${cut}.ratedLoad`, Number.NEGATIVE_INFINITY, 'not-a-number'],
      [`${cut}.ratedLoad`, '1e999 ohm', 'result-out-of-range'],
      [`${cut}.crestFactor`, 0.9, 'out-of-range'],
      [`${cut}.crestFactor`, Number.NaN, 'not-a-number'],
      [`${cut}.carrierFrequency`, '0 Hz', 'not-positive'],
      [`${cut}.duty.off`, '-1 s', 'negative'],
      [`${cut}.loads`, [500, -1], 'not-positive', `${cut}.loads[1]`],
      ['monitor.rows[0].set', -1, 'negative'],
      ['monitor.rows[0].lower', '-2 ohm', 'negative'],
    ]);
  });

  describe('with a text that is no quantity', () => {
    eachRow('specification', [
      [`${cut}.ratedPower`, '160', 'unit-missing', undefined, '160 W'],
      [`${cut}.ratedPower`, '160 ohm', 'unit-mismatch'],
      [`${cut}.ratedPower`, '1,6 W', 'number-malformed', undefined, '1.6'],
      [`${cut}.ratedPower`, '', 'number-malformed'],
      [`${cut}.ratedLoad`, '1 000 ohm', 'number-malformed', undefined, '1000'],
      [`${cut}.maximumPeakVoltage`, '1 kV rms', 'form-mismatch'],
      [`${cut}.maximumPeakVoltage`, '1 kV pp', 'form-mismatch'],
      [`${bipolar}.rows[0].lower`, '212 mW', 'unit-mismatch'],
      [`${bipolar}.rows[0].upper`, '0,3 A', 'number-malformed', undefined, '0.3'],
      [`${bipolar}.regimes.currentLimit`, '1.2 A peak', 'form-mismatch'],
      ['rules[0].parameters.below', 20, 'not-a-fraction', undefined, '20 %'],
      ['rules[0].parameters.below', '20', 'unit-missing', undefined, '%'],
    ]);
  });

  describe('with a curve that is none', () => {
    eachRow('specification', [
      [`${curve}.points`, [{ load: 100, power: 64 }], 'wrong-count'],
      [`${curve}.points`, [], 'wrong-count'],
      [`${curve}.points[2].load`, 200, 'not-ascending'],
      [`${curve}.points[2].load`, '250 ohm', 'not-ascending'],
      [`${curve}.points[3].power`, 0, 'not-positive'],
      [`${curve}.points[3].power`, '-3 W', 'not-positive'],
      [`${curve}.points[3]`, { load: 1000 }, 'missing-member', `${curve}.points[3].power`],
      [`${curve}.points[3]`, null, 'wrong-type'],
      [`${curve}.interpolation`, 'log-lin', 'unknown-choice', undefined, 'log-log'],
    ]);
  });

  describe('with a tolerance that is none', () => {
    const tolerance = `${cut}.tolerance`;
    eachRow('specification', [
      [tolerance, { in: 'power', relative: 20 }, 'limit-negative', `${tolerance}.relative`, '20 %'],
      [tolerance, { in: 'power', relative: { below: 1.2 } }, 'limit-negative', `${tolerance}.relative.below`],
      [tolerance, { in: 'power', text: '±120 %' }, 'limit-negative', `${tolerance}.relative`],
      [tolerance, { in: 'power', relative: -0.2 }, 'negative', `${tolerance}.relative`],
      [tolerance, { in: 'power', relative: { above: '-2 %' } }, 'negative', `${tolerance}.relative.above`],
      [tolerance, { in: 'power', relative: {} }, 'missing-member', `${tolerance}.relative.below`],
      [tolerance, { in: 'power' }, 'missing-member', `${tolerance}.relative`],
      [tolerance, { relative: 0.2 }, 'missing-member', `${tolerance}.in`],
      [tolerance, { in: 'resistance', relative: 0.2 }, 'unknown-choice', `${tolerance}.in`],
      [tolerance, { in: 'power', relative: 0.2, absolute: 3 }, 'missing-member', `${tolerance}.combine`],
      [tolerance, { in: 'power', absolute: '5 ohm' }, 'unit-mismatch', `${tolerance}.absolute`],
      [tolerance, { in: 'power', absolute: '5 %' }, 'text-malformed', `${tolerance}.absolute`],
      [tolerance, { in: 'power', relative: '±5 W' }, 'text-malformed', `${tolerance}.relative`],
      [tolerance, { in: 'power', text: '±5 W', floor: 0 }, 'contradiction', `${tolerance}.floor`],
      [tolerance, { in: 'power', text: '20' }, 'unit-missing', `${tolerance}.text`],
      [
        tolerance,
        { in: 'power', relative: { below: 0.1, abvoe: 0.2 } },
        'unknown-member',
        `${tolerance}.relative.abvoe`,
        'above',
      ],
      [tolerance, '±20 %', 'wrong-type'],
    ]);
    it('keeps a tolerance above 100 % that has a floor', () => {
      expect(
        faultsOf(
          'specification',
          spoilt('specification-text.json', tolerance, { in: 'power', text: '±120 %, not below 0 W' }),
        ),
      ).toEqual([]);
    });
  });

  describe('with settings beside its scale', () => {
    eachRow('specification', [
      [`${cut}.scale.minimum`, 200, 'band-reversed'],
      [`${cut}.points[0].setting`, '165 W', 'setting-outside-scale'],
      [`${cut}.points[0].setting`, 4, 'setting-outside-scale'],
      [`${cut}.points[0].setting`, 'level 4', 'number-malformed'],
      [`${cut}.settings`, ['40 W', '40 mA'], 'unit-mismatch', `${cut}.settings[1]`],
      [`${cut}.settings`, ['40 W', 40], 'duplicate', `${cut}.settings[1]`],
      [`${bipolar}.rows[1].setting`, '4', 'level-unknown'],
      [`${bipolar}.rows[1].setting`, 3, 'level-unknown', undefined, '"3"'],
      [`${bipolar}.scale.levels`, ['1', '2', '3', '2'], 'duplicate', `${bipolar}.scale.levels[3]`],
      [`${bipolar}.scale.levels`, [], 'wrong-count'],
      [`${bipolar}.scale`, { kind: 'levels' }, 'unknown-choice', `${bipolar}.scale.kind`],
      [`${cut}.points[0].load`, -500, 'not-positive'],
      [`${bipolar}.points`, [{ setting: '2', load: 100 }], 'setting-without-power', `${bipolar}.points[0]`],
    ]);
    it.each([[{ setting: '2', load: 100, power: '20 W' }], [{ setting: '3', load: 100 }]])(
      'lets the point %j pass, for which a power or a row stands',
      (point) => {
        expect(faultsOf('specification', spoilt('specification-text.json', `${bipolar}.points`, [point]))).toEqual([]);
      },
    );
  });

  it.each([
    ['refuse', undefined, ['setting-without-power']],
    ['proportional', undefined, []],
    ['refuse', { currentLimit: 1 }, []],
  ])('whose other settings %s, with the regimes %j, says %j of a point between', (otherSettings, regimes, codes) => {
    const tree = spoilt('specification-text.json', `${cut}.points`, [{ setting: 80, load: 500 }]);
    Object.assign(tree.outputs[0], { otherSettings }, regimes && { regimes });
    expect(faultsOf('specification', tree).map((fault) => fault.code)).toEqual(codes);
  });

  describe('with parts that repeat or contradict each other', () => {
    eachRow('specification', [
      [`${bipolar}.id`, 'cut.pure', 'duplicate'],
      [`${bipolar}.rows[1].setting`, '1', 'duplicate', `${bipolar}.rows[1]`],
      [`${bipolar}.rows[0].lower`, '300 mA', 'band-reversed'],
      [`${bipolar}.rows[1]`, { setting: '3', load: 100, quantity: 'current' }, 'tolerance-missing'],
      [`${cut}.points[1].setting`, 160, 'duplicate', `${cut}.points[1]`],
      [`${cut}.loads`, ['0.5 kohm', 500], 'duplicate', `${cut}.loads[1]`],
      ['monitor.rows[0].lower', 200, 'band-reversed'],
      ['rules[1].rule', 'output-accuracy', 'duplicate'],
      ['rules[0].parameters.abov', 0.2, 'unknown-choice', undefined, 'above'],
      ['rules[0].rule', 'accuracy', 'unknown-choice'],
      [`${bipolar}.regimes`, {}, 'missing-member', `${bipolar}.regimes.currentLimit`],
      ['outputs', [], 'wrong-count'],
    ]);
  });

  describe('with texts that cannot be printed', () => {
    const line = `${cut}.name`;
    eachRow('specification', [
      [line, '', 'text-unsuitable'],
      [line, '   ', 'text-unsuitable'],
      [line, 'a\nb', 'text-unsuitable'],
      [line, 'a\u0007', 'text-unsuitable'],
      [line, 'a\u0085', 'text-unsuitable'],
      [line, 'abc\u202etxt', 'text-unsuitable'],
      [line, 'half \ud83d', 'text-unsuitable'],
      [line, 'x'.repeat(501), 'text-unsuitable'],
      ['note', 'a\u0000b', 'text-unsuitable'],
      ['note', 'x'.repeat(10_001), 'text-unsuitable'],
      [`${cut}.id`, 'a/b', 'text-unsuitable'],
      [`${cut}.id`, '../etc', 'text-unsuitable'],
      [`${cut}.id`, '', 'text-unsuitable'],
      [`${cut}.id`, 'é', 'text-unsuitable'],
      [`${cut}.id`, 'x'.repeat(65), 'text-unsuitable'],
      ['generator.name', 7, 'wrong-type'],
    ]);
    it.each(['Schneiden – חתך', 'קטע ארוך', '切割 🐕', 'Crème\u00a0à µ Ω', 'می‌روم'])('keeps %s', (text) => {
      expect(faultsOf('specification', spoilt('specification-text.json', line, text))).toEqual([]);
    });
    it('keeps the lines of a note', () => {
      expect(faultsOf('specification', spoilt('specification-text.json', 'note', 'one\n\ttwo'))).toEqual([]);
    });
  });

  describe('with members too many or too few', () => {
    eachRow('specification', [
      [`${cut}.ratedpower`, 160, 'unknown-member', undefined, '"ratedPower"'],
      [`${cut}.crest_factor`, 1.5, 'unknown-member', undefined, '"crestFactor"'],
      ['outputs[0].weather', 'fine', 'unknown-member'],
      ['generator', undefined, 'missing-member'],
      [`${cut}.scale`, undefined, 'missing-member'],
      [`${cut}.scale.kind`, undefined, 'missing-member'],
      [`${cut}.ratedLoad`, undefined, 'missing-member'],
      ['version', undefined, 'missing-member'],
      ['schema', undefined, 'missing-member'],
      [`${cut}.name`, null, 'wrong-type', undefined, 'Leave the member out'],
      ['outputs', {}, 'wrong-type'],
      [cut, 'cut', 'wrong-type'],
      [cut, new Date(0), 'wrong-type'],
      [cut, [], 'wrong-type'],
    ]);
    it('gives no hint where nothing is near', () => {
      const [fault] = faultsOf('specification', spoilt('specification-text.json', 'weather', 'fine'));
      expect(fault).toMatchObject({ code: 'unknown-member', path: 'weather' });
      expect(fault).not.toHaveProperty('hint');
    });
  });

  describe('that is not what was asked for', () => {
    eachRow('specification', [
      ['version', 2, 'newer-version'],
      ['version', 0, 'unknown-choice'],
      ['version', '1', 'unknown-choice'],
      ['schema', 'esu-limits/bench', 'unknown-document', undefined, 'bench'],
      ['schema', 'esu-limits/specificaton', 'unknown-document', undefined, '"esu-limits/specification"'],
      ['schema', 'recipe', 'unknown-document'],
      ['schema', 7, 'unknown-document'],
    ]);
    it.each([undefined, null, 7, 'text', true, [], () => 1, Symbol('s'), 10n])('%s is no document', (value) => {
      expect(faultsOf('specification', value)).toMatchObject([{ code: 'wrong-type', path: '' }]);
    });
    it('names the version that it would have to read', () => {
      const [fault] = faultsOf('specification', spoilt('specification-text.json', 'version', 3));
      expect(fault).toMatchObject({
        received: '3',
        requirement: 'must be at most 1, the version that this library reads',
      });
    });
  });
});

describe('a bench', () => {
  eachRow('bench', [
    ['loads[0].resistance', 0, 'not-positive'],
    ['loads[0].powerRating', '-1 W', 'not-positive'],
    ['loads[1].id', 'R100', 'duplicate'],
    ['loads', [], 'wrong-count'],
    ['loads[1].overload.power', '100 W', 'contradiction'],
    ['loads[0].ohms', 100, 'unknown-member'],
    ['leads[0].circuits', [], 'wrong-count'],
    ['leads[0].circuits[0]', 'unipolar', 'unknown-choice'],
    ['reads', 'voltage', 'unknown-choice'],
    ['reads', 'ampere', 'unknown-choice'],
    ['instrument.reads', [], 'wrong-count', 'instrument.reads'],
    ['instrument.reads[0].ranges', [], 'wrong-count'],
    ['instrument.reads[0].ranges[0].maximum', '2 W', 'unit-mismatch'],
    ['instrument.reads[0].ranges[0].resolution', '3 A', 'contradiction'],
    ['instrument.reads[0].ranges[0].resolution', 0, 'not-positive'],
    ['instrument.frequencyRange.lower', '3 MHz', 'band-reversed'],
    ['instrument.maximumCrestFactor', 0.5, 'out-of-range'],
    ['substitution.maximumDifference', 5, 'not-a-fraction', undefined, '5 %'],
    ['times.read', -1, 'negative'],
  ]);

  it('with a function in the unit of another says so for each of its numbers', () => {
    const tree = spoilt('bench-text.json', 'instrument.reads[1].quantity', 'voltage');
    expect(faultsOf('bench', tree).map(({ code, path }) => [code, path])).toEqual([
      ['unit-mismatch', 'instrument.reads[1].ranges[0].maximum'],
      ['unit-mismatch', 'instrument.reads[1].ranges[0].resolution'],
    ]);
  });
});

describe('readings', () => {
  eachRow('readings', [
    ['readings[0].value', -1, 'negative'],
    ['readings[0].value', '561', 'unit-missing'],
    ['readings[0].value', '0,561 A', 'number-malformed', undefined, '0.561'],
    ['readings[0].value', '561 mW', 'unit-mismatch'],
    ['readings[0].value', Number.NaN, 'not-a-number'],
    ['readings[0].display.value', '158 V', 'unit-mismatch'],
    ['readings[0].peakVoltage', '430 V rms', 'form-mismatch'],
    ['readings[0].phase', 'as found', 'unknown-choice', undefined, 'as-found'],
    ['readings[0].point', 1, 'wrong-type'],
    ['readings[0].quantity', undefined, 'missing-member'],
    ['readings[1].afterInterruption', 'yes', 'wrong-type'],
    ['monitor[0].displayed', 'open', 'number-malformed'],
    ['monitor[0].set', '-3 ohm', 'negative'],
  ]);

  it('of zero are readings', () => {
    expect(faultsOf('readings', spoilt('readings-text.json', 'readings[0].value', 0))).toEqual([]);
  });
});

describe('all faults at once', () => {
  it('whatever their kind, in one error', () => {
    const tree = fixture('specification-text.json');
    const [cut, bipolar] = tree.outputs;
    cut.ratedPower = '-160 W';
    cut.ratedlaod = 500;
    cut.curves[0].points[3].power = 0;
    cut.curves[0].points[4].load = '900 ohm';
    cut.points[0].setting = 999;
    cut.tolerance.text = '-12/+15';
    bipolar.id = 'cut.pure';
    bipolar.rows[0].lower = '0,2 A';
    delete bipolar.circuit;
    tree.generator = { nmae: 'x' };
    tree.rules[0].parameters.sideways = 0.1;
    tree.cautions.push('\u0000');
    let error: unknown;
    try {
      parseSpecification(tree);
    } catch (thrown) {
      error = thrown;
    }
    expect(error).toBeInstanceOf(CalculationError);
    const { faults, message } = error as CalculationError;
    const found = faults.map(({ code, path }) => `${path}: ${code}`);
    expect(found.sort()).toEqual(
      [
        'cautions[1]: text-unsuitable',
        'generator.name: missing-member',
        'generator.nmae: unknown-member',
        'outputs[0].curves[0].points[3].power: not-positive',
        'outputs[0].curves[0].points[4].load: not-ascending',
        'outputs[0].points[0].setting: setting-outside-scale',
        'outputs[0].ratedPower: not-positive',
        'outputs[0].ratedlaod: unknown-member',
        'outputs[0].tolerance.text: unit-missing',
        'outputs[1].circuit: missing-member',
        'outputs[1].id: duplicate',
        'outputs[1].rows[0].lower: number-malformed',
        'rules[0].parameters.sideways: unknown-choice',
      ].sort(),
    );
    expect(message.split('\n')).toHaveLength(faults.length);
  });
});
