import type { Fault } from 'esu-limits';
import type { Bench, Findings, Plan, Specification } from 'esu-limits/procedure';
import {
  type ComputedRef,
  computed,
  type InjectionKey,
  inject,
  type Ref,
  ref,
  shallowRef,
  watch,
  watchEffect,
} from 'vue';
import { benchFromText, type DocumentText, specificationFromText } from './state/document-text.js';
import { type Entries, isEmpty, noEntries } from './state/entries.js';
import { change, startHistory, undo, undoable } from './state/history.js';
import { findingsOf, type Outcome, planOf } from './state/results.js';
import { entriesFromSaved, savedText, storageName } from './state/saved-entries.js';
import { readingsFromTyped, type TypedDocument } from './state/typed-readings.js';

/** What the parts of the page share: what was typed, and all that is worked out from it. */
export interface Worksheet {
  readonly entries: ComputedRef<Entries>;
  readonly isEmpty: ComputedRef<boolean>;
  /** Changes the entries; `what` names the change for undoing, changes with the same key in a row are one. */
  readonly apply: (entries: Entries, what: string, key?: string) => void;
  readonly undo: () => void;
  readonly undoable: ComputedRef<string | undefined>;
  readonly specification: ComputedRef<DocumentText<Specification>>;
  readonly bench: ComputedRef<DocumentText<Bench>>;
  /** The plan, or the last that could be made while something is wrong. */
  readonly plan: Ref<Plan | undefined>;
  readonly isStale: ComputedRef<boolean>;
  readonly planFaults: ComputedRef<readonly Fault[]>;
  readonly typed: ComputedRef<TypedDocument>;
  readonly findings: ComputedRef<Outcome<Findings>>;
  /** Faults of one field of what was typed at the bench. */
  readonly faultsOf: (field: string) => readonly Fault[];
  /** Said to those who do not see the page. */
  readonly said: Ref<string>;
  readonly say: (text: string) => void;
  /** Why entries cannot be kept, if they cannot. */
  readonly storageFault: Ref<string>;
}

const key: InjectionKey<Worksheet> = Symbol('worksheet');

export { key as worksheetKey };

export function useWorksheet(): Worksheet {
  const worksheet = inject(key);
  if (worksheet === undefined) throw new Error('outside of the worksheet');
  return worksheet;
}

/** Makes the worksheet of the page from what the browser has kept. */
export function makeWorksheet(): Worksheet {
  const storageFault = ref('');
  const history = shallowRef(startHistory(kept(storageFault) ?? noEntries));
  const entries = computed(() => history.value.now);
  const specificationText = computed(() => entries.value.specification);
  const benchText = computed(() => entries.value.bench);
  const specification = computed(() => specificationFromText(specificationText.value));
  const bench = computed(() => benchFromText(benchText.value));
  const outcome = computed(() => planOf(specification.value.value, bench.value.value));
  const plan = shallowRef<Plan>();
  watchEffect(
    () => {
      const { value } = outcome.value;
      if (value !== undefined) plan.value = value;
      else if (specificationText.value.trim() === '' || benchText.value.trim() === '') plan.value = undefined;
    },
    { flush: 'sync' },
  );
  const typed = computed(() => readingsFromTyped(entries.value, plan.value));
  const byField = computed(() => {
    const map = new Map<string, Fault[]>();
    for (const { field, fault } of typed.value.faults) map.set(field, [...(map.get(field) ?? []), fault]);
    return map;
  });
  watch(entries, (now) => keep(now, storageFault));
  const said = ref('');
  return {
    entries,
    isEmpty: computed(() => isEmpty(entries.value)),
    apply: (now, what, place = '') => {
      history.value = change(history.value, now, what, place);
    },
    undo: () => {
      history.value = undo(history.value);
    },
    undoable: computed(() => undoable(history.value)),
    specification,
    bench,
    plan,
    isStale: computed(() => plan.value !== undefined && outcome.value.value === undefined),
    planFaults: computed(() => outcome.value.faults),
    typed,
    findings: computed(() => findingsOf(plan.value, typed.value.readings)),
    faultsOf: (field) => byField.value.get(field) ?? [],
    said,
    say: (text) => {
      said.value = text;
    },
    storageFault,
  };
}

function kept(fault: Ref<string>): Entries | undefined {
  try {
    return entriesFromSaved(localStorage.getItem(storageName));
  } catch {
    fault.value = cannotKeep;
    return undefined;
  }
}

function keep(entries: Entries, fault: Ref<string>): void {
  try {
    if (isEmpty(entries)) localStorage.removeItem(storageName);
    else localStorage.setItem(storageName, savedText(entries));
    fault.value = '';
  } catch {
    fault.value = cannotKeep;
  }
}

const cannotKeep =
  'This browser does not keep entries: they are lost when the page is closed or loaded anew. Download the record before.';
