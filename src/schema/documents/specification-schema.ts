import { header } from '../parts/header.js';
import { describeForSchema } from '../parts/json-schema-notes.js';
import { crossCheck, items, list, members, optional, reportRepeats } from '../parts/members.js';
import { blankableLine, line, prose } from '../parts/text.js';
import { checkLeakage, leakageTest } from './leakage-schema.js';
import { monitorRow } from './monitor-row-schema.js';
import { monitorModel } from './monitor-schema.js';
import { output } from './output-schema.js';
import { ruleChoice } from './rule-schema.js';

/** What the maker of a generator publishes. */
export const specificationSchema = describeForSchema(
  crossCheck(
    members({
      ...header('specification'),
      note: optional(prose),
      source: optional(prose),
      generator: members({
        name: line,
        identification: optional(blankableLine),
        serialNumber: optional(blankableLine),
      }),
      rules: optional(list(ruleChoice)),
      outputs: list(output, 1),
      monitor: optional(
        members({ connection: line, rows: optional(list(monitorRow, 1)), model: optional(monitorModel) }),
      ),
      leakage: optional(list(leakageTest)),
      cautions: optional(list(prose)),
    }),
    (specification, report) => {
      const { outputs, rules, monitor } = specification;
      if (
        typeof monitor === 'object' &&
        monitor !== null &&
        monitor.rows === undefined &&
        monitor.model === undefined
      ) {
        report('missing-member', ['monitor', 'rows'], undefined, 'must be given, or model');
      }
      checkLeakage(specification, report);
      reportRepeats(
        items(outputs).map((entry) => entry?.id),
        (i) => ['outputs', i, 'id'],
        report,
      );
      reportRepeats(
        items(rules).map((entry) => entry?.rule),
        (i) => ['rules', i, 'rule'],
        report,
      );
    },
  ),
  { title: 'Specification of a generator, as its maker publishes it' },
);
