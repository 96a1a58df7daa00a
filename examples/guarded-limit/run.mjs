// From the accuracy statement of a meter to limits that allow for it. Everything here is invented.
import { bandAround, convertBand } from 'esu-limits';
import { decide, explainAcceptanceBand } from 'esu-limits/decision';
import { budgetText } from 'esu-limits/report';
import { expandedUncertainty, readingBudget } from 'esu-limits/uncertainty';

// The sheet of the generator: 120 W at 500 ohm, within 20 % in power. The meter reads current.
const load = 500;
const limits = convertBand(bandAround(120, { relative: 0.2 }), { from: 'power', to: 'current', load });

// The meter: 1.5 % of reading + 3 counts, half a per cent of drift a year; the load is good to 1 %.
const meter = {
  reads: 'current',
  range: { maximum: 2, resolution: 0.001 },
  accuracy: { ofReading: 0.015, counts: 3, drift: 0.005 },
  load: { resistance: load, tolerance: 0.01 },
  slope: 0, // around this load the output keeps its power
};
const budgetAt = (reading) => readingBudget({ ...meter, reading });
const budget = budgetAt(Math.sqrt(120 / load));
console.log(budgetText(budget, { title: '120 W at 500 ohm', unit: 'A' }));

// Guard band U at each limit: a reading inside is inside the limits with all but certainty.
const { standardUncertainty } = budgetAt(limits.upper);
const uncertainty = {
  standardUncertainty,
  coverageFactor: expandedUncertainty({ standardUncertainty }).coverageFactor,
};
const rule = { kind: 'guarded-acceptance', ratio: 1 };
const { acceptance } = explainAcceptanceBand(limits, rule, uncertainty, { resolution: 0.001 });
const mA = (ampere) => `${(ampere * 1000).toFixed(1)} mA`;
console.log(
  `tolerance ${mA(limits.lower)} to ${mA(limits.upper)}, accept ${mA(acceptance.lower)} to ${mA(acceptance.upper)}`,
);

const { decision, conformance } = decide({ band: limits, value: 0.53, rule, ...uncertainty });
console.log(`530 mA: ${decision}; it conforms with a probability of ${(100 * conformance.conforming).toFixed(1)} %`);
