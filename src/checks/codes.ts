/** What an error code means and what to do about it. */
export interface CodeEntry {
  /** What is wrong, in one sentence. */
  readonly cause: string;
  /** What would put it right. */
  readonly remedy: string;
}

/**
 * Every code that an error, a fault or a warning of this library can carry, with cause and remedy.
 * The list is the only place where codes are made: `CalculationErrorCode` is its set of keys.
 */
export const codeList = {
  'not-a-number': {
    cause: 'A value is not a finite number (it is missing, text, NaN or infinite).',
    remedy: 'Give a finite number in SI units.',
  },
  'not-positive': { cause: 'A value must be greater than zero.', remedy: 'Check the sign and the unit of the value.' },
  negative: { cause: 'A value must not be negative.', remedy: 'Check the sign of the value.' },
  'out-of-range': {
    cause: 'A value lies outside the range in which it has a meaning.',
    remedy: 'Give a value inside the range that the message states.',
  },
  'not-a-fraction': {
    cause: 'A relative value or a probability is not between 0 and 1.',
    remedy: 'Give a fraction: 20 % is 0.2.',
  },
  'not-an-integer': { cause: 'A count is not a whole number.', remedy: 'Give a whole number.' },
  'wrong-type': { cause: 'A value has another type than is needed.', remedy: 'Give the type that the message states.' },
  'unknown-choice': {
    cause: 'A word is not one of the allowed words.',
    remedy: 'Use one of the words that the message lists.',
  },
  'wrong-count': {
    cause: 'Too few or too many values were given.',
    remedy: 'Give the number of values that the message states.',
  },
  'not-ascending': {
    cause: 'Values that must rise strictly are unsorted or repeated.',
    remedy: 'Sort the values and remove repetitions.',
  },
  'band-reversed': { cause: 'A lower limit lies above its upper limit.', remedy: 'Exchange or correct the limits.' },
  'band-empty': {
    cause: 'No value lies between the limits (after rounding inward, or after intersection).',
    remedy: 'Use a finer resolution, or check that the limits belong to the same point.',
  },
  'limit-negative': {
    cause: 'The tolerance makes a limit negative in a quantity that cannot be negative.',
    remedy: 'Use a smaller tolerance, or state a physical floor by name.',
  },
  'result-out-of-range': {
    cause: 'The inputs are valid, but the result is too large or too small for a number.',
    remedy: 'Check the units of the inputs: such values do not occur on a bench.',
  },
  'load-outside-curve': {
    cause: 'A load lies outside the loads of the points that a curve was given.',
    remedy: 'Use a load inside the curve, or say by name how the curve continues.',
  },
  'regimes-do-not-fit': {
    cause: 'Points deviate from the fitted model of constant current, power and voltage by more than 10 % in power.',
    remedy: 'Check the points; if they are right, read them through a load curve, not through the model.',
  },
  'reading-missing': {
    cause: 'A load of a sweep has no reading.',
    remedy: 'Read power, current or voltage at the load, or leave the load out.',
  },
  'level-unknown': {
    cause: 'A setting names a level that the control does not have.',
    remedy: 'Use one of the levels of the scale, spelt as there.',
  },
  'setting-outside-scale': {
    cause: 'A setting lies outside the scale of the control.',
    remedy: 'Use a setting between the lowest and the highest of the scale.',
  },
  'tolerance-missing': {
    cause: 'Nothing says how far the output may deviate: no tolerance, no row with limits, no chosen rule.',
    remedy: 'State the maker\u2019s tolerance, give rows with limits, or choose the accuracy rule of the standard.',
  },
  'setting-without-power': {
    cause: 'Nothing published says what power to expect at a setting and load.',
    remedy: 'Give a curve or a row for the setting, or say by name how other settings follow.',
  },
  'load-not-on-bench': {
    cause: 'No load of the bench is near enough to the wanted load.',
    remedy: 'Add the load to the bench, or permit a larger difference.',
  },
  'load-substituted': {
    cause: 'A load of the bench stands in for the wanted load.',
    remedy: 'Nothing to do when the stated cost is acceptable; otherwise use the wanted load.',
  },
  'power-assumed-unchanged': {
    cause: 'The load of the bench differs a little from the wanted load and no curve says what that changes.',
    remedy: 'Give the curve, or a load of the wanted value.',
  },
  'limits-differ': {
    cause: 'The published limits and the limits derived from expected value and tolerance differ.',
    remedy: 'Find out which is right before relying on either; the plan says which one governs.',
  },
  'nominal-from-limits': {
    cause: 'A row states limits and no expected value.',
    remedy: 'State the power of the row; until then the middle of its limits stands at margin 0.',
  },
  'nominal-outside-limits': {
    cause: 'The expected value of a point lies outside its limits.',
    remedy: 'Check the row, the tolerance and the curve: they contradict each other.',
  },
  'no-limits': {
    cause: 'No limit applies to a point.',
    remedy: 'State a tolerance if the point is to be judged.',
  },
  'not-feasible': {
    cause: 'Instrument, load or leads cannot take a point as planned.',
    remedy: 'Read the failed checks of the point and change the bench or the setting.',
  },
  'crest-factor-missing': {
    cause: 'A peak voltage or a crest factor has a limit on the bench, and the sheet states no crest factor.',
    remedy: 'Ask the maker for the crest factor of the mode before activating.',
  },
  'crest-factor-open-circuit': {
    cause: 'The crest factor is stated for an open circuit and used at a load.',
    remedy: 'Take expected peaks as an estimate.',
  },
  'peak-above-stated': {
    cause: 'The peak voltage expected at a load is above the maximum that the maker states.',
    remedy: 'Check crest factor, power and maximum voltage of the sheet: they do not agree.',
  },
  'duty-missing': {
    cause: 'The sheet states no longest activation.',
    remedy: 'Ask the maker; keep activations short and pauses long.',
  },
  'reading-extra': {
    cause: 'A reading belongs to no point of the plan.',
    remedy: 'Check the point of the reading.',
  },
  'alarm-reason-differs': {
    cause: 'The monitor gave another reason for an alarm than the stated monitor has.',
    remedy: 'Find out which of its limits it applied: an alarm for a wrong reason may hide one that is missing.',
  },
  'reading-converted': {
    cause: 'A reading is in another quantity than the limits and was converted at the load.',
    remedy: 'Read the quantity of the plan where possible: the error of the load enters a conversion.',
  },
  'reading-beyond-range': {
    cause: 'A reading is larger than the range of the instrument that the plan chose.',
    remedy: 'Check the range and the reading.',
  },
  'keying-suspected': {
    cause: 'A reading would lie inside its limits if it were shifted by a factor of 10, 100 or 1000.',
    remedy: 'Check the decimal point and the unit that were written down, and read again.',
  },
  'burst-not-over': {
    cause: 'A burst has not died out when the next begins.',
    remedy: 'State by name whether it ends there or goes on below the next one: rms value and peak depend on it.',
  },
  'lengths-differ': {
    cause: 'The channels of a capture have different numbers of samples.',
    remedy: 'Export both channels over the same time; what they have in common is used.',
  },
  'capture-clipped': {
    cause: 'A channel of a capture seems to be cut off at its top or bottom.',
    remedy: 'Use a wider range, or check that the wave has flat tops.',
  },
  'few-samples': {
    cause: 'A cycle of the carrier has few samples.',
    remedy: 'Sample faster: ten a cycle at least for peaks within 5 %.',
  },
  'capture-aliased': {
    cause: 'The carrier of a capture is not where it is expected.',
    remedy: 'Sample faster, or check the sample interval and the expected carrier.',
  },
  'few-bursts': {
    cause: 'A capture holds too few whole bursts or cycles for means over them.',
    remedy: 'Capture more of them: a longer time at the same rate.',
  },
  'noise-near-threshold': {
    cause: 'The noise of a capture comes near its burst threshold, so that bursts may be split or made by noise.',
    remedy: 'Raise the burst threshold, or capture again with less noise or in a smaller range.',
  },
  'no-carrier': {
    cause: 'No periodic output is found in a capture.',
    remedy: 'Check that the output was active and the channel connected; lower the burst threshold if need be.',
  },
  'power-negative': {
    cause: 'The mean of voltage times current is negative.',
    remedy: 'Turn one of the probes round, or give it a negative factor.',
  },
  'acceptance-empty': {
    cause: 'The guard bands leave no reading that could be accepted.',
    remedy: 'Measure with less uncertainty, use a smaller guard band or a finer resolution, or choose another rule.',
  },
  'box-not-on-bench': {
    cause: 'The sheet states thresholds of a monitor, and the bench has nothing that sets resistances.',
    remedy: 'State the resistance box of the bench with its accuracy.',
  },
  'rule-not-applicable': {
    cause: 'The decision rule of the plan cannot be applied at this point, or nothing is stated of the uncertainty.',
    remedy: "Complete the bench's statement of accuracy, or choose a rule that the limits of the point allow.",
  },
  'guard-band-clamped': {
    cause: 'A rule would put acceptance limits outside the tolerance; they stay at the tolerance limits.',
    remedy: 'Nothing to do: simple acceptance already holds what the rule promises.',
  },
  'limit-from-memory': {
    cause: 'A limit was recalled and not read in the standard.',
    remedy: 'Check your copy of the standard, or state the limit with its source.',
  },
  'limit-looser': {
    cause: 'A stated limit is looser than the one that is known for the arrangement.',
    remedy: 'Check the source of the stated limit: it governs as stated.',
  },
  'exemption-possible': {
    cause: 'A generator rated at 50 W or less is exempt from some clauses of the standard.',
    remedy: 'Look up whether the clause applies; the limit is used here all the same.',
  },
  'resistor-off-nominal': {
    cause: 'A test resistor is further from its nominal value than the standard is recalled to permit.',
    remedy: 'Use a resistor nearer to its nominal value, or take the conversion as an estimate.',
  },
  'source-unknown': {
    cause: 'Nothing says what the leakage comes through, and the measuring resistor is not of its nominal value.',
    remedy: 'Nothing to do: the highest leakage that any path could give is used. State the path for a closer value.',
  },
  'frequency-outside': {
    cause: 'A frequency lies outside the range for which a limit is stated.',
    remedy: 'Measure at a frequency inside the range that the message states.',
  },
  'hysteresis-too-wide': {
    cause: 'The hysteresis of a monitor leaves no resistance that would end its alarm.',
    remedy: 'Check the hysteresis against the limits: it is in ohms, that of a rise a fraction of the baseline.',
  },
  'threshold-not-verifiable': {
    cause: 'A box cannot show that a monitor trips inside its tolerance, or has no value beyond a threshold.',
    remedy: 'Use a box as the message describes, or record that the threshold was not verified.',
  },
  'few-baselines': {
    cause: 'A rise over a baseline can be challenged at fewer than three baselines.',
    remedy: 'Use a box with more values between the limits of the monitor.',
  },
  'sweep-step-alone': {
    cause: 'A step of a sweep goes against its direction and has no other after it.',
    remedy: 'Write the steps down in the order in which they were set; repeat a sweep whole.',
  },
  'sweep-left-out': {
    cause: 'A sweep to the upper limit of a monitor would be ended by its rule of a rise.',
    remedy: 'Use a box with smaller steps about the limit, so that the sweep can begin nearer to it.',
  },
  'sweep-turns': {
    cause: 'The values of a sweep do not go on in one direction.',
    remedy: 'Write one sweep for each direction, without repeated values.',
  },
  'sweep-chatters': {
    cause: 'A monitor trips or releases more than once in one sweep.',
    remedy: 'Check the contacts of box and leads, and sweep again more slowly.',
  },
  'open-not-detected': {
    cause: 'Nothing that is stated of a monitor makes it alarm at an open circuit.',
    remedy: 'Check the sheet: an upper limit is probably missing from it.',
  },
  'short-not-detected': {
    cause: 'Nothing that is stated of a contact quality monitor makes it alarm at a short circuit.',
    remedy: 'Check the sheet for a lower limit; without one, check lead and electrode by eye.',
  },
  'expression-refused': {
    cause:
      'An expression cannot be read, or uses something outside the closed list of functions, operators and symbols.',
    remedy: 'Use numbers, the symbols of the inputs, + - * / ^ and the listed functions.',
  },
  'symbol-unknown': {
    cause: 'An expression uses a symbol that was not declared, or a symbol is asked for that the model does not have.',
    remedy: 'Correct the spelling (capital and small letters differ), or declare the symbol.',
  },
  'symbol-unused': {
    cause: 'A declared symbol does not occur in the expression.',
    remedy: 'Use it, or remove it from the list: an input that changes nothing is most often a slip.',
  },
  'symbol-unsuitable': {
    cause: 'A name cannot be a symbol: it is that of a function or a constant, or has other characters than it may.',
    remedy: 'Use letters and digits, with underscores between them, beginning with a letter: R, T_0, I_lower.',
  },
  'outside-domain': {
    cause: 'An expression has no value at its inputs: a root or a logarithm of a negative number, a division by 0.',
    remedy: 'Check the inputs that the message shows; a derivative has no value at a kink either.',
  },
  'dimensions-differ': {
    cause: 'Terms that are added or compared have different dimensions.',
    remedy: 'Check the expression and the units of its symbols.',
  },
  'dimension-not-plain': {
    cause: 'An exponent or the argument of a function such as exp or sin has a dimension.',
    remedy: 'Divide it by a reference value of the same unit.',
  },
  'exponent-not-plain': {
    cause: 'A quantity with a dimension is raised to something that is not a plain number.',
    remedy: 'Write the exponent as a number, such as 2, 0.5 or 1/3.',
  },
  'text-too-long': { cause: 'A text is longer than any quantity is.', remedy: 'Give the number and its unit alone.' },
  'text-malformed': {
    cause: 'A text is not of the form that is needed.',
    remedy: 'Write it in the form that the message states.',
  },
  'number-malformed': {
    cause: 'A number in a text cannot be read with certainty (a decimal comma, grouped digits, two signs).',
    remedy: 'Write digits with a decimal point and without grouping: 1.5, 1000, 1.2e3.',
  },
  'unit-missing': { cause: 'A number stands without its unit.', remedy: 'Write the unit behind the number: 120 W.' },
  'unit-unknown': {
    cause: 'A unit is not in the vocabulary, or its prefix does not occur in the trade.',
    remedy: 'Use a unit that the message lists; capital and small letters matter.',
  },
  'unit-mismatch': {
    cause: 'A unit belongs to another quantity than the one that is needed.',
    remedy: 'Give the quantity that the message states, in one of its units.',
  },
  'form-mismatch': {
    cause: 'A peak value stands where an rms value is needed, or the other way round.',
    remedy: 'Give the value in the form that the message states; peak is rms times the crest factor.',
  },
  duplicate: {
    cause: 'Something that must be unique appears twice.',
    remedy: 'Rename or remove one of the two.',
  },
  'missing-member': { cause: 'A member that is needed is not there.', remedy: 'Add the member that the path names.' },
  'unknown-member': {
    cause: 'A member or a column has a name that the document does not know, so what it says would be ignored.',
    remedy: 'Correct the spelling, or remove it.',
  },
  'unsafe-member': {
    cause: 'A member is named __proto__, constructor or prototype: such names are used to attack programs.',
    remedy: 'Remove the member, and find out where the document comes from.',
  },
  contradiction: {
    cause: 'Two statements of a document exclude each other.',
    remedy: 'Correct the one that is wrong.',
  },
  'text-unsuitable': {
    cause: 'A text is empty, too long, or holds characters that cannot be printed.',
    remedy: 'Write a text as the message asks.',
  },
  'not-json': {
    cause: 'A text is not JSON.',
    remedy: 'Correct the text at the line and column that the path names.',
  },
  'too-deep': {
    cause: 'A document is nested deeper than any that this library reads.',
    remedy: 'Check where it comes from.',
  },
  'too-large': {
    cause: 'A document is larger than the limit that protects the program.',
    remedy: 'Split it, or raise the limit by the option.',
  },
  'too-many-faults': {
    cause: 'A document has more faults than are listed.',
    remedy: 'Correct those that are listed, and read it again.',
  },
  'unknown-document': {
    cause: 'A document does not say what it is, or says something that is not known.',
    remedy: 'Give the member "schema" one of the names that the message lists.',
  },
  'newer-version': {
    cause: 'A document was written for a later version of its schema than this library reads.',
    remedy: 'Use a newer version of the library.',
  },
  'csv-malformed': {
    cause: 'A CSV text breaks off inside quotation marks, or a row has more cells than the header.',
    remedy: 'Correct the line that the path names; quote cells that contain the delimiter.',
  },
  'not-converged': {
    cause: 'An iteration did not reach the accuracy that was asked for.',
    remedy: 'Ask for less accuracy, allow more steps, or narrow the range.',
  },
  'no-sign-change': {
    cause: 'A root was sought between two values at which the function has the same sign.',
    remedy: 'Give a range at whose ends the function has opposite signs.',
  },
  'function-not-finite': {
    cause: 'A function returned a value that is not a finite number.',
    remedy: 'Check the function at the argument that the message states.',
  },
  'matrix-shape': {
    cause: 'A matrix has rows of other lengths, or other sizes, than the operation needs.',
    remedy: 'Give the number of rows and columns that the message states.',
  },
  'not-symmetric': {
    cause: 'A matrix of covariances or correlations is not symmetric.',
    remedy: 'Give the same value in both places of each pair.',
  },
  'not-positive-semidefinite': {
    cause:
      'A matrix of covariances or correlations contradicts itself: some combination would have a negative variance.',
    remedy:
      'Check the correlations against one another: a strong one between A and B and between B and C binds that of A and C.',
  },
  singular: {
    cause: 'A system of equations has no unique solution: some columns are combinations of others.',
    remedy: 'Remove the columns that add nothing, or give more data.',
  },
} as const satisfies Record<string, CodeEntry>;

/** A code of the list: stable, in lower case with hyphens, meant for programs. */
export type CalculationErrorCode = keyof typeof codeList;
