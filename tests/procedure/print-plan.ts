// Prints plan and findings of a fixed job, so that two processes can be compared.
import { makeRecord, planVerification } from '../../src/procedure/index.js';
import { bench, curvedOutput, readingsOf, specificationOf } from './documents.js';

const plan = planVerification(specificationOf(curvedOutput), bench);
console.log(JSON.stringify(makeRecord(plan, readingsOf({ point: '3', value: 0.7 }, { point: '5', value: 1.5 }))));
