// The worksheet page of the built site, used as a technician would at a bench.
import { readFileSync } from 'node:fs';
import { chromium as playwright } from 'playwright-core';
import { chromiumFlags } from '../package/chromium.mjs';
import { StageFailure } from '../stages/stage.mjs';
import { axeFindings } from './axe.mjs';
import { serveSite } from './serve.mjs';

const desk = { width: 1280, height: 900 };
const phone = { width: 375, height: 740 };
const hostile = [
  '<img src=x onerror="window.wasHit=1"><script>window.wasHit=1</script>',
  '{{ constructor.constructor("window.wasHit=1")() }}',
  '=HYPERLINK("http://example.org/","x")',
  'x'.repeat(3000),
  '\u202etfel ot thgir\u202c',
  'שלום עולם',
];

/** Uses the worksheet; throws a StageFailure that lists everything that is wrong. `pictures` is a folder to look at. */
export async function tryWorksheet(folder, base, executablePath, pictures) {
  const { server, address } = await serveSite(folder, base);
  const browser = await playwright.launch({ executablePath, args: chromiumFlags });
  const faults = [];
  try {
    for (const [name, step] of Object.entries(steps)) {
      const context = await browser.newContext({ viewport: desk, acceptDownloads: true });
      const page = await context.newPage();
      page.setDefaultTimeout(15_000);
      const expect = (holds, what) => {
        if (!holds) faults.push(`${name}: ${what}`);
      };
      watch(page, address, (what) => faults.push(`${name}: ${what}`));
      try {
        await page.goto(`${address}worksheet/`, { waitUntil: 'networkidle' });
        await step(page, expect, pictures);
      } catch (error) {
        faults.push(`${name}: ${error}`);
      }
      await context.close();
    }
  } finally {
    await browser.close();
    server.close();
  }
  if (faults.length > 0) throw new StageFailure(faults.join('\n'));
  return Object.keys(steps).length;
}

function watch(page, address, fault) {
  const { origin } = new URL(address);
  page.on('pageerror', (error) => fault(String(error)));
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') fault(message.text());
  });
  page.on('request', (request) => {
    const url = request.url();
    if (!url.startsWith(origin) && !/^(data|blob|about):/.test(url)) fault(`asks for ${url}`);
  });
}

const loadExample = (page) => page.getByRole('button', { name: 'Load the example' }).click();
const readingOf = (page, number) => page.getByLabel(`Reading, point ${number}`, { exact: true });
const rowOf = (page, number) => page.locator('.ws-point', { has: readingOf(page, number) });
const outcomeOf = async (page, number) => (await rowOf(page, number).locator('[data-outcome]').textContent()).trim();
const finalOf = async (page) => (await page.locator('[data-final]').textContent()).trim();

/** Opens a part of the page that is closed. */
async function open(page, summary) {
  const details = page.locator('details', { has: page.locator('summary', { hasText: summary }) }).last();
  if (!(await details.evaluate((element) => element.open))) await details.locator('summary').first().click();
  return details;
}

/** Puts a long text in place at once: typed line by line it takes the browser its time. */
async function replaceText(page, selector, text) {
  await page.locator(selector).evaluate((element, value) => {
    element.value = value;
    element.dispatchEvent(new Event('input', { bubbles: true }));
  }, text);
}

async function importReadings(page) {
  await page.locator('[data-csv="csv"]').setInputFiles('examples/workshop/readings.csv');
  await page.getByRole('button', { name: /^Take over \d+ readings$/ }).click();
}

async function widerThanScreen(page) {
  return page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
}

/** A link beside a fault leads to the place of its code on the page of errors. */
async function leadsToItsCode(page, link, expect) {
  const coming = page.context().waitForEvent('page');
  await link.click();
  const errors = await coming;
  await errors.waitForLoadState('load');
  const code = decodeURIComponent(new URL(errors.url()).hash.slice(1));
  expect(/^[a-z-]+$/.test(code), `the link of a fault leads to ${errors.url()}`);
  expect((await errors.locator(`h2[id="${code}"]`).count()) === 1, `the page of errors has no place for ${code}`);
  await errors.close();
}

const steps = {
  async 'a trace of the monitor is judged, drawn and kept'(page, expect, pictures) {
    await loadExample(page);
    await page.locator('[data-open]').setInputFiles('tests/schema/fixtures/monitor-trace.json');
    await open(page, 'Pictures of the sweeps and traces');
    const picture = page.locator('[data-monitor-pictures] svg');
    const drawn = (await picture.last().textContent()) ?? '';
    expect(drawn.includes('1.4 s late'), 'the picture does not say what is late');
    expect((await finalOf(page)) === 'FAIL', `a late alarm gives ${await finalOf(page)}`);
    if (pictures) await page.locator('[data-monitor-pictures]').screenshot({ path: `${pictures}/trace.png` });
    await page.reload({ waitUntil: 'networkidle' });
    const kept = await page.locator('#ws-traces').inputValue();
    expect(kept.includes('Contact lost'), 'the trace is lost by a reload');
    await page.getByRole('button', { name: 'Clear everything' }).click();
    await loadExample(page);
    await open(page, 'Resistance against time');
    const sheet = readFileSync('examples/workshop/monitor-trace.csv', 'utf8');
    await replaceText(page, '#ws-trace-csv', sheet.replace('\n10,', '\n1O,'));
    const wrong = await page.locator('#ws-trace-csv-faults').textContent();
    expect(wrong.includes('line 3, column 1 (time)'), `why a bad sheet is refused: ${wrong}`);
    expect((await page.getByRole('button', { name: /^Take over/ }).count()) === 0, 'a bad trace can be taken over');
    await page.locator('[data-csv="traceCsv"]').setInputFiles('examples/workshop/monitor-trace.csv');
    await page.getByRole('button', { name: 'Take over 1 trace' }).click();
    const fromSheet = JSON.parse(await page.locator('#ws-traces').inputValue());
    const { name: _, ...fromFile } = JSON.parse(kept)[0];
    expect(JSON.stringify(fromSheet) === JSON.stringify([fromFile]), 'the CSV gives another trace than the JSON');
    await replaceText(page, '#ws-traces', '[{"time": ["0 s"]}]');
    const why = await page.locator('#ws-traces-faults').textContent();
    expect(/monitorTraces\[0\]/.test(why ?? ''), `why a bad trace is refused: ${why}`);
  },
  async 'a trace of the monitor in a file of CSV waits where traces are, and the example has one'(page, expect) {
    await loadExample(page);
    await page.locator('[data-open]').setInputFiles('examples/workshop/monitor-trace.csv');
    const take = page.getByRole('button', { name: 'Take over 1 trace' });
    await take.waitFor({ state: 'visible' });
    await page.getByRole('button', { name: 'Clear everything' }).click();
    await loadExample(page);
    await page.getByRole('button', { name: 'Put its trace of the monitor beside the traces' }).click();
    await take.click();
    expect((await finalOf(page)) === 'FAIL', `the trace of the example gives ${await finalOf(page)}`);
  },

  async 'each electrode is read by itself, and the reason of an alarm is asked for and compared'(page, expect) {
    await loadExample(page);
    const leakage = page.getByLabel('Reading, leakage 1', { exact: true });
    await leakage.fill('88 mA');
    const rows = page.locator('.ws-point', { has: page.getByLabel(/^Reading, leakage \d$/) });
    const outcomes = await rows.locator('[data-outcome]').allTextContents();
    expect(
      outcomes.map((text) => text.trim()).join() === 'pass,no reading,no reading,no reading',
      `four say ${outcomes}`,
    );
    const first = page.locator('.ws-point.is-challenge').first();
    expect((await first.getByLabel(/^Reason it gave/).count()) === 0, 'a reason is asked for without an alarm');
    await first.getByLabel(/^Alarm/).selectOption('yes');
    await first.getByLabel(/^Reason it gave/).selectOption('above-upper');
    const text = await first.textContent();
    expect(text.includes('It changes no verdict'), `another reason gives ${text}`);
    expect((await first.locator('[data-outcome]').textContent()).trim() === 'pass', 'a reason changes a verdict');
  },

  async 'readings are judged as they are typed'(page, expect) {
    await loadExample(page);
    expect((await finalOf(page)) === 'INCOMPLETE', 'without readings the whole is not incomplete');
    await readingOf(page, 2).fill('0.87 A');
    expect((await outcomeOf(page, 2)).startsWith('FAIL'), `0.87 A gives ${await outcomeOf(page, 2)}`);
    expect((await finalOf(page)) === 'FAIL', `a failing point gives ${await finalOf(page)}`);
    await readingOf(page, 2).fill('950 mA');
    const milli = await outcomeOf(page, 2);
    expect(milli.startsWith('pass'), `950 mA gives ${milli}`);
    await readingOf(page, 2).fill('0.95 A');
    expect((await outcomeOf(page, 2)) === milli, '0.95 A is not the same as 950 mA');
    await readingOf(page, 2).fill('0.95 a');
    expect((await outcomeOf(page, 2)) === 'not read', `0.95 a gives ${await outcomeOf(page, 2)}`);
    expect((await readingOf(page, 2).getAttribute('aria-invalid')) === 'true', 'a bad reading is not marked');
    const described = await readingOf(page, 2).getAttribute('aria-describedby');
    const why = await page.evaluate((id) => document.getElementById(id)?.textContent, described);
    expect(/unit/i.test(why ?? ''), `why 0.95 a is refused: ${why}`);
    await readingOf(page, 2).fill('0.95 A');
    await rowOf(page, 2).getByText('Working and remarks').click();
    const steps = await rowOf(page, 2).locator('.ws-working li').count();
    expect(steps > 3, `the working has ${steps} steps`);
    await rowOf(page, 2).getByText('Budget of a reading').click();
    const rows = await rowOf(page, 2).locator('.ws-budget tr').count();
    expect(rows > 3, `the budget has ${rows} rows`);
    const curves = page.locator('.ws-pictures svg');
    expect((await curves.count()) > 2, 'there are no curves');
    expect((await page.locator('.ws-point .margin svg').count()) === 1, 'the margin is not drawn');
  },

  async 'entries survive a reload, and can be cleared and brought back'(page, expect) {
    await loadExample(page);
    await readingOf(page, 1).fill('0.61 A');
    await page.getByLabel('Remarks').fill('kept');
    await page.reload({ waitUntil: 'networkidle' });
    expect((await readingOf(page, 1).inputValue()) === '0.61 A', 'the reading is lost');
    expect((await page.getByLabel('Remarks').inputValue()) === 'kept', 'the remark is lost');
    await page.getByRole('button', { name: 'Clear everything' }).click();
    expect((await page.locator('.ws-point').count()) === 0, 'something is left');
    const left = await page.evaluate(() => Object.keys(localStorage).filter((key) => key.startsWith('esu-limits')));
    expect(left.length === 0, `the storage holds ${left}`);
    await page.getByRole('button', { name: /^Undo: clearing/ }).click();
    expect((await readingOf(page, 1).inputValue()) === '0.61 A', 'undo does not bring the reading back');
    await readingOf(page, 1).fill('0.62 A');
    await page.getByRole('button', { name: /^Undo: reading of point 1/ }).click();
    expect((await readingOf(page, 1).inputValue()) === '0.61 A', 'undo does not take back the last change');
  },

  async 'a sheet with a bad row is not taken over until the row is mended or left out'(page, expect) {
    await loadExample(page);
    const text = 'point,reading\n1,0.61 A\n2,0.95 ampere\n3,1.11 A\n';
    const file = { name: 'readings.csv', mimeType: 'text/csv', buffer: Buffer.from(text) };
    await page.locator('[data-csv="csv"]').setInputFiles(file);
    const faults = await page.locator('#ws-csv-faults').textContent();
    expect(faults.includes('line 3, column 2'), `the faults are ${faults}`);
    expect((await page.getByRole('button', { name: /^Take over/ }).count()) === 0, 'a bad sheet can be taken over');
    expect((await readingOf(page, 1).inputValue()) === '', 'a bad sheet was taken over');
    await page.getByRole('button', { name: 'Leave out line 3' }).click();
    await page.getByRole('button', { name: 'Take over 2 readings' }).click();
    expect((await readingOf(page, 1).inputValue()) === '610 mA', 'the first row is not there');
    expect((await readingOf(page, 2).inputValue()) === '', 'the bad row is there');
    expect((await readingOf(page, 3).inputValue()) === '1.11 A', 'the third row is not there');
  },

  async 'the readings of the example give the findings of the example, and a record'(page, expect) {
    await loadExample(page);
    await importReadings(page);
    expect((await finalOf(page)) === 'FAIL', `the example ends with ${await finalOf(page)}`);
    await page.getByLabel('By', { exact: true }).fill('Invented technician');
    for (const kind of ['HTML', 'Text', 'Markdown', 'CSV', 'JSON']) {
      const coming = page.waitForEvent('download');
      await page.getByRole('button', { name: `Download ${kind}`, exact: true }).click();
      const download = await coming;
      const saved = readFileSync(await download.path(), 'utf8');
      expect(saved.includes('Invented technician'), `${download.suggestedFilename()} does not name who signs`);
    }
    await open(page, 'Look at the record');
    const frame = page.frameLocator('iframe.ws-preview');
    expect((await frame.locator('h1').textContent()).length > 0, 'the record cannot be looked at');
    await page.evaluate(() => {
      const append = document.body.append.bind(document.body);
      document.body.append = (node) => {
        const listen = () => {
          node.contentWindow.print = () => {
            window.printed = node.contentDocument.body.textContent;
          };
        };
        node.addEventListener('load', listen, { capture: true });
        append(node);
      };
    });
    await page.getByRole('button', { name: 'Print the record' }).click();
    await page.waitForFunction(() => window.printed !== undefined);
    expect((await page.evaluate(() => window.printed)).includes('Invented technician'), 'what is printed is no record');
  },

  async 'a bad field of the specification says why beside it; forms and JSON are the same'(page, expect) {
    await loadExample(page);
    await open(page, '1 Generator');
    await open(page, 'Monopolar cut');
    const field = page.locator('#specification-outputs-0-ratedLoad');
    await field.fill('400');
    const faults = page.locator('#specification-outputs-0-ratedLoad-faults');
    expect(/unit/i.test(await faults.textContent()), `beside the field: ${await faults.textContent()}`);
    await leadsToItsCode(page, faults.locator('a'), expect);
    expect((await page.locator('.ws-stale').count()) === 1, 'that the plan is of older data is not said');
    expect((await page.getByRole('button', { name: 'Print the record' }).count()) === 0, 'a stale record can be made');
    await field.fill('0.4 kohm');
    expect((await faults.count()) === 0, 'a good field still has a fault');
    expect(await field.isVisible(), 'a mended field is hidden from who mends it');
    const json = await page.locator('#specification-json').inputValue();
    expect(JSON.parse(json).outputs[0].ratedLoad === '0.4 kohm', 'the JSON is not what the form says');
    await page.locator('.ws-json summary').first().click();
    await replaceText(page, '#specification-json', json.replace('"0.4 kohm"', '"410 ohm"'));
    expect((await field.inputValue()) === '410 ohm', 'the form is not what the JSON says');
    await replaceText(page, '#specification-json', '{ "schema": ');
    expect(/line 1/.test(await page.locator('#specification-json-faults').textContent()), 'no line is named');
  },

  async 'a blank sheet says what is missing, and becomes a plan by the forms alone'(page, expect) {
    await page.getByRole('button', { name: 'Begin a blank sheet' }).click();
    expect((await page.locator('.ws-summary').count()) === 2, 'what is missing is not listed');
    const fill = async (fields, form) => {
      for (const [name, text] of Object.entries(fields)) {
        const input = page.locator(`#${form}-${name}`);
        await input.evaluate((element) => {
          for (let up = element.closest('details'); up; up = up.parentElement.closest('details')) up.open = true;
        });
        await input.fill(text);
      }
    };
    await fill(
      {
        'generator-name': 'Invented',
        'outputs-0-name': 'Cut',
        'outputs-0-connection': 'To the load',
        'outputs-0-scale-minimum': '5 W',
        'outputs-0-scale-maximum': '120 W',
        'outputs-0-ratedPower': '120 W',
        'outputs-0-ratedLoad': '500 ohm',
        'outputs-0-tolerance-text': '±20 %',
      },
      'specification',
    );
    await page.locator('#specification-outputs-0-tolerance-in').selectOption('power');
    await fill(
      {
        name: 'Bench',
        'instrument-name': 'Meter',
        'instrument-reads-0-ranges-0-maximum': '2 A',
        'instrument-reads-0-ranges-0-resolution': '1 mA',
        'loads-0-resistance': '500 ohm',
        'loads-0-powerRating': '250 W',
      },
      'bench',
    );
    expect((await page.locator('.ws-summary').count()) === 0, await page.locator('.ws').textContent());
    const points = await page.locator('.ws-point').count();
    expect(points > 0, 'there is no plan');
  },

  async 'the keyboard alone suffices'(page, expect) {
    const focused = () =>
      page.evaluate(() => {
        const { activeElement: element } = document;
        return `${element.tagName} ${element.textContent.trim().slice(0, 40)} ${element.labels?.[0]?.textContent ?? ''}`;
      });
    const tabTo = async (pattern, most = 400) => {
      for (let i = 0; i < most; i += 1) {
        if (pattern.test(await focused())) return true;
        await page.keyboard.press('Tab');
      }
      expect(false, `${pattern} is not reached by Tab`);
      return false;
    };
    await tabTo(/BUTTON Load the example/);
    await page.keyboard.press('Enter');
    await tabTo(/INPUT.*Reading, point 1$/);
    const outline = await page.evaluate(() => getComputedStyle(document.activeElement).outlineStyle);
    expect(outline !== 'none', 'the focus is not shown');
    await page.keyboard.type('0.61 A');
    await page.keyboard.press('Enter');
    expect(/Reading, point 2$/.test(await focused()), `Enter leads to ${await focused()}`);
    await page.keyboard.type('0.87 A');
    expect((await outcomeOf(page, 1)).startsWith('pass'), 'point 1 does not pass');
    expect((await outcomeOf(page, 2)).startsWith('FAIL'), 'point 2 does not fail');
    await page.keyboard.press('Enter');
    await page.keyboard.press('Shift+Enter');
    const said = await page.locator('.ws [role="status"]').textContent();
    expect(/point 2: FAIL/.test(said), `it is said: ${said}`);
    await tabTo(/SUMMARY Working and remarks of point 2/);
    await page.keyboard.press('Enter');
    expect(await rowOf(page, 2).locator('.ws-working').first().isVisible(), 'the working does not open');
    await tabTo(/BUTTON Print the record/);
  },

  async 'phone width, without sideways scrolling'(page, expect, _pictures) {
    await page.setViewportSize(phone);
    expect((await widerThanScreen(page)) <= 0, `empty: ${await widerThanScreen(page)} pixels too wide`);
    await loadExample(page);
    await importReadings(page);
    expect((await widerThanScreen(page)) <= 0, `example: ${await widerThanScreen(page)} pixels too wide`);
    for (const details of await page.locator('.ws details').all()) {
      await details.evaluate((element) => {
        element.open = true;
      });
    }
    await page.waitForTimeout(300);
    expect((await widerThanScreen(page)) <= 0, `all open: ${await widerThanScreen(page)} pixels too wide`);
  },

  async 'dark mode, and no serious finding of axe in either'(page, expect, pictures) {
    await loadExample(page);
    await importReadings(page);
    await readingOf(page, 4).fill('1 apple');
    for (const colorScheme of ['light', 'dark']) {
      await page.emulateMedia({ colorScheme });
      await page.waitForTimeout(200);
      const paper = await page.evaluate(() => getComputedStyle(document.querySelector('.ws button')).backgroundColor);
      const isDark = Math.max(...paper.match(/\d+/g).slice(0, 3).map(Number)) < 80;
      expect(isDark === (colorScheme === 'dark'), `${colorScheme}: paper is ${paper}`);
      await picture(page, pictures, colorScheme);
      for (const finding of await axeFindings(page, { part: '.ws-page' }))
        expect(false, `axe, ${colorScheme}: ${finding}`);
    }
    await page.setViewportSize(phone);
    await picture(page, pictures, 'phone');
    for (const details of await page.locator('.ws details').all()) {
      await details.evaluate((element) => {
        element.open = true;
      });
    }
    await page.setViewportSize(desk);
    for (const finding of await axeFindings(page, { part: '.ws-page' })) expect(false, `axe, all open: ${finding}`);
  },

  async 'a verdict is told by word and shape, not by colour alone'(page, expect) {
    await loadExample(page);
    await importReadings(page);
    const signs = await page
      .locator('.ws-verdict')
      .evaluateAll((all) =>
        all.map((element) => [
          element.textContent.trim(),
          element.querySelector('svg').innerHTML.replace(/data-v-\S+/g, ''),
        ]),
      );
    const shapes = new Map();
    for (const [word, shape] of signs) {
      expect(word !== '', 'a verdict without a word');
      shapes.set(shape, (shapes.get(shape) ?? new Set()).add(word));
    }
    expect(shapes.size > 2, `only ${shapes.size} shapes`);
    for (const words of shapes.values()) expect(words.size === 1, `one shape for ${[...words]}`);
  },

  async 'hostile text in every field stays text'(page, expect) {
    await loadExample(page);
    await importReadings(page);
    for (const text of hostile) {
      await page.evaluate((value) => {
        for (const details of document.querySelectorAll('.ws details')) details.open = true;
        const fields = [...document.querySelectorAll('.ws input[type="text"], .ws textarea')];
        for (const field of fields) {
          if (/-json$|-(id|circuit|levels)$/.test(field.id)) continue;
          field.value = value;
          field.dispatchEvent(new Event('input', { bubbles: true }));
        }
      }, text);
      await page.waitForTimeout(200);
      // Names that a plan can be made with go on into sheets and pictures.
      await page.getByRole('button', { name: 'Load the example' }).click();
      await page.evaluate(
        async (value) => {
          for (const id of ['generator-name', 'outputs-0-name', 'outputs-0-connection', 'source', 'note', 'cautions']) {
            const field = document.getElementById(`specification-${id}`);
            field.value = value;
            field.dispatchEvent(new Event('input', { bubbles: true }));
            await new Promise((resolve) => setTimeout(resolve, 0));
          }
        },
        text.slice(0, 150),
      );
      await page.waitForTimeout(300);
      if ((await page.locator('.ws-stale').count()) > 0) {
        // Characters that turn or hide text are refused, and the field says so.
        expect(/\p{Cf}/u.test(text), `refused: ${text.slice(0, 30)}`);
        const why = await page.locator('#specification-generator-name-faults').textContent();
        expect(why.length > 10, 'a text is refused and nothing says why');
        await loadExample(page);
      }
      await readingOf(page, 1).fill('0.61 A');
      await page.getByLabel('Remarks').fill(text);
      await page.waitForTimeout(300);
      expect((await page.locator('.ws-pictures svg').count()) > 0, `no plan with ${text.slice(0, 30)}`);
      expect(
        (await page.locator('.ws img, .ws script').count()) === 0,
        `markup became an element: ${text.slice(0, 30)}`,
      );
      expect((await page.evaluate(() => window.wasHit)) === undefined, `a script ran: ${text.slice(0, 30)}`);
      expect((await widerThanScreen(page)) <= 0, `${text.slice(0, 30)}… makes the page too wide`);
      await importReadings(page);
    }
  },
};

/** A picture for people to look at, when a folder is given. */
async function picture(page, folder, name) {
  if (folder !== undefined) await page.screenshot({ path: `${folder}/worksheet-${name}.png`, fullPage: true });
}
