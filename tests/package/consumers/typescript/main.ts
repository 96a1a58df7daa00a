import { CalculationError, currentFromPower } from 'esu-limits';

const current: number = currentFromPower(120, 500);
console.log(`current ${current}`);

try {
  currentFromPower(-1, 500);
} catch (error) {
  if (error instanceof CalculationError) console.log(`refused ${error.code}`);
}
