import type { DefaultTheme } from 'vitepress';

type Render = NonNullable<DefaultTheme.LocalSearchOptions['_render']>;

/** A page as the search reads it: words and headings, without coloured code and drawn formulas, which cost most time. */
export const searchText: Render = (page, env, markdown) => {
  const { highlight = null } = markdown.options;
  const { rules } = markdown.renderer;
  const { math_inline, math_block } = rules;
  const nothing = (): string => '';
  markdown.options.highlight = null;
  Object.assign(rules, { math_inline: nothing, math_block: nothing });
  try {
    const html = markdown.render(page, env);
    return env.frontmatter?.['search'] === false ? '' : html;
  } finally {
    markdown.options.highlight = highlight;
    Object.assign(rules, { math_inline, math_block });
  }
};
