import { spawnSync } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import type { BenchCase } from '../bench-case.js';
import { bench, specification } from '../plan-documents.js';

const repeats = 15;
const folder = '.cache/bench';
const points = 10_000;

/** Makes the plan once in a fresh process, and says how long it took and how much memory the whole process held. */
const program = `
import { readFileSync } from 'node:fs';
import { planVerification } from 'esu-limits/procedure';
const [specification, bench] = JSON.parse(readFileSync('${folder}/plan-input.json', 'utf8'));
const start = process.hrtime.bigint();
const plan = planVerification(specification, bench);
const seconds = Number(process.hrtime.bigint() - start) / 1e9;
const megabytes = process.resourceUsage().maxRSS / 1024;
const good = plan.points.filter((p) => p.feasible && p.working.length > 0 && p.limits.lower < p.limits.upper);
console.log(JSON.stringify({ seconds, megabytes, points: plan.points.length, good: good.length }));
`;

interface Answer {
  readonly seconds: number;
  readonly megabytes: number;
  readonly points: number;
  readonly good: number;
}

function planOnce(): Answer {
  const { status, stdout, stderr } = spawnSync(process.execPath, [`${folder}/plan-once.mjs`], { encoding: 'utf8' });
  if (status !== 0) throw new Error(stderr);
  const answer = JSON.parse(stdout) as Answer;
  if (answer.points !== points || answer.good !== points) {
    throw new Error(`${answer.points} points, of which ${answer.good} have limits, working and a load: not ${points}`);
  }
  return answer;
}

export const benchCase: BenchCase = {
  name: 'plan of 10 000 points with working',
  n: points,
  measure: async () => {
    mkdirSync(folder, { recursive: true });
    writeFileSync(`${folder}/plan-input.json`, JSON.stringify([specification, bench]));
    writeFileSync(`${folder}/plan-once.mjs`, program);
    const answers = Array.from({ length: repeats }, planOnce);
    return [
      { what: 'time, first call of a process', unit: 's', samples: answers.map(({ seconds }) => seconds), goal: 1 },
      {
        what: 'memory of the whole process',
        unit: 'MB',
        samples: answers.map(({ megabytes }) => megabytes),
        goal: 200,
      },
    ];
  },
};
