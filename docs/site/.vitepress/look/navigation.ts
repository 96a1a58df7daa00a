import { existsSync, readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { DefaultTheme } from 'vitepress';

const site = fileURLToPath(new URL('../../', import.meta.url));

/** A page that is not there is not linked. */
function present(items: readonly (readonly [text: string, link: string])[]): DefaultTheme.SidebarItem[] {
  return items
    .filter(([, link]) => existsSync(`${site}${link === '' || link.endsWith('/') ? `${link}index` : link}.md`))
    .map(([text, link]) => ({ text, link: `/${link}` }));
}

/** The pages of a folder of generated pages, as a list that opens. */
function pagesOf(folder: string): DefaultTheme.SidebarItem[] {
  if (!existsSync(site + folder)) return [];
  return readdirSync(site + folder)
    .filter((name) => name.endsWith('.md') && name !== 'index.md')
    .map((name) => name.slice(0, -3))
    .sort()
    .map((name) => ({ text: name, link: `/${folder}/${name}` }));
}

function opening(item: DefaultTheme.SidebarItem, folder: string): DefaultTheme.SidebarItem {
  const items = pagesOf(folder);
  return items.length === 0 ? item : { ...item, collapsed: true, items };
}

const start = present([
  ['Start', ''],
  ['Worksheet', 'worksheet/'],
  ['For programs', 'programs'],
]);

const guides = present([
  ['All guides', 'guides/'],
  ['Limits in the quantity you read', 'guides/limits-in-the-quantity-you-read'],
  ['Tolerances that are not symmetric', 'guides/tolerances-that-are-not-symmetric'],
  ['Reading a load curve', 'guides/reading-a-load-curve'],
  ['Another load than the published', 'guides/another-load'],
  ['Crest factor and peak', 'guides/crest-factor-and-peak'],
  ['Strays and leads', 'guides/strays-and-leads'],
  ['Uncertainty', 'guides/uncertainty'],
  ['Decision rules', 'guides/decision-rules'],
  ['The return-electrode monitor', 'guides/return-electrode-monitor'],
  ['HF leakage', 'guides/hf-leakage'],
]);

const notebooks = present([
  ['From a specification to limits', 'notebooks/from-a-specification-to-limits'],
  ['What does my meter do to this limit?', 'notebooks/what-does-my-meter-do-to-this-limit'],
]);

const reference = present([
  ['Formulas', 'reference/formulas'],
  ['Worked checks', 'reference/checks'],
  ['Errors', 'reference/errors'],
  ['Accuracy, speed and size', 'reference/accuracy'],
  ['API', 'api/'],
]).map((item) => {
  if (item.text === 'Formulas') return opening(item, 'reference/formulas');
  return item.text === 'API' ? opening(item, 'api') : item;
});

const project = present([
  ['Changelog', 'project/changelog'],
  ['Contributing', 'project/contributing'],
]);

export const navigation: DefaultTheme.NavItem[] = [
  ...present([
    ['Worksheet', 'worksheet/'],
    ['Guides', 'guides/'],
    ['Formulas', 'reference/formulas'],
    ['API', 'api/'],
  ]),
].map(({ text, link }) => ({ text, link }) as DefaultTheme.NavItemWithLink);

export const sidebar: DefaultTheme.SidebarItem[] = [
  { items: start },
  ...(guides.length > 0 ? [{ text: 'Guides', items: guides }] : []),
  ...(notebooks.length > 0 ? [{ text: 'Notebooks', items: notebooks }] : []),
  { text: 'Reference', items: reference },
  { text: 'Project', items: project },
];
