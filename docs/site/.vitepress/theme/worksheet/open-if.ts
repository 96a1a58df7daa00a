import type { ObjectDirective } from 'vue';

/** Opens a part of the page when there is reason to; it never closes one that a person may be typing in. */
export const openIf: ObjectDirective<HTMLDetailsElement, boolean> = {
  mounted(element, { value }) {
    if (value) element.open = true;
  },
  updated(element, { value, oldValue }) {
    if (value && !oldValue) element.open = true;
  },
};
