// What two metres of lead do to a load of 2 kΩ at 500 kHz, with a picture. Everything here is invented: the bench is that
// of the equipment workshop of a veterinary teaching hospital.
//
// Leads of an output under test are as hot as the output: connect them with the output off, keep them apart from each
// other and from anything that conducts, and touch nothing while it is active. The maker's procedure comes first.
import { mkdirSync, writeFileSync } from 'node:fs';
import { coaxialLine, loadThroughLeads, powerErrorFromStrays, roundWireResistance, twoWireLine } from 'esu-limits';

const here = new URL('.', import.meta.url);
const frequency = 500e3;
const length = 2;
const copper = 1.68e-8;

// Two single wires of 1 mm copper, each there and back: their resistance is that of twice the length of one.
const wire = { resistivity: copper, frequency, diameter: 1e-3, length: 2 };
const resistance = roundWireResistance(wire).resistance;
const arrangements = [
  { name: 'two wires, 200 mm apart', line: twoWireLine({ spacing: 0.2, diameter: 1e-3 }) },
  { name: 'two wires, 20 mm apart', line: twoWireLine({ spacing: 0.02, diameter: 1e-3 }) },
  {
    name: 'two wires, side by side',
    line: twoWireLine({ spacing: 2.5e-3, diameter: 1e-3, relativePermittivity: 2.3 }),
  },
  {
    name: 'coaxial cable',
    line: coaxialLine({ innerDiameter: 0.9e-3, outerDiameter: 3.15e-3, relativePermittivity: 2.25 }),
  },
].map((one) => ({ ...one, leads: { length, ...one.line, resistance } }));

const lines = [];
const say = (text) => lines.push(text);
const percent = (fraction, digits = 2) => `${(100 * fraction).toFixed(digits)} %`;
const signed = (fraction) => `${fraction < 0 ? '−' : '+'}${percent(Math.abs(fraction))}`;

say(`${length} m of lead, a load of 2 kΩ, ${frequency / 1e3} kHz; 100 V at the near end`);
for (const { name, leads } of arrangements) {
  const seen = loadThroughLeads({ load: { resistance: 2000 }, leads, frequency, voltage: 100 });
  say('');
  say(name);
  say(`  ${(leads.inductance * 1e6).toFixed(3)} µH/m, ${(leads.capacitance * 1e12).toFixed(1)} pF/m`);
  say(`  seen from the near end: ${seen.impedance.toFixed(0)} Ω at ${((seen.phase * 180) / Math.PI).toFixed(1)}°`);
  say(`  bypasses the load: ${percent(seen.bypassRatio, 1)} of the current (a sum of phasors)`);
  say(
    `  voltage at the load: ${seen.ends.loadVoltage.toFixed(2)} V; current: ${(seen.ends.loadCurrent * 1e3).toFixed(2)} mA of ${(seen.ends.nearCurrent * 1e3).toFixed(2)} mA`,
  );
  say(`  power in the load: ${seen.ends.loadPower.toFixed(3)} W`);
  say(
    `  power reckoned at the near end: ${signed(seen.powerErrorFromCurrent)} from I²R, ${signed(seen.powerErrorFromVoltage)} from V²/R`,
  );
}

// Where it comes from: at a high load it is the capacitance between the leads, whatever their inductance.
const capacitance = length * arrangements.at(-1).leads.capacitance;
const alone = powerErrorFromStrays({ resistance: 2000, parallelCapacitance: capacitance, frequency });
say('');
say(`the capacitance of the coaxial cable alone, across the load: ${signed(alone.fromCurrent)} from I²R`);
say('at a high load read the voltage, or the current at the load; keep the leads short and apart');

// The picture: by how much I²R at the near end is too high, against the load, for each arrangement.
const decade = { first: 50, last: 5000 };
const loads = Array.from({ length: 121 }, (_, k) => decade.first * (decade.last / decade.first) ** (k / 120));
const curves = arrangements.map(({ name, leads }) => ({
  name,
  points: loads.map((load) => [
    load,
    loadThroughLeads({ load: { resistance: load }, leads, frequency }).powerErrorFromCurrent,
  ]),
}));

const out = new URL('out/', here);
mkdirSync(out, { recursive: true });
writeFileSync(new URL('leads.txt', out), `${lines.join('\n')}\n`);
writeFileSync(new URL('leads.svg', out), picture(curves));
console.log(lines.join('\n'));
console.log('written: leads.txt and leads.svg in examples/leads/out');

/** A picture that needs nothing else: logarithmic in both directions. */
function picture(drawn) {
  const [width, height] = [760, 480];
  const frame = { left: 84, right: 560, top: 64, bottom: 416 };
  const errors = { lowest: 1e-4, highest: 10 };
  const x = (load) =>
    frame.left + ((frame.right - frame.left) * Math.log(load / decade.first)) / Math.log(decade.last / decade.first);
  const y = (error) =>
    frame.bottom -
    ((frame.bottom - frame.top) * Math.log(error / errors.lowest)) / Math.log(errors.highest / errors.lowest);
  const inks = ['#1b6f8a', '#b3541e', '#5b7f2b', '#6a4c93'];
  const dashes = ['none', '9 4', '3 3', '12 3 3 3'];
  const parts = [];
  const text = (at, [left, top], more = '') =>
    parts.push(`<text x="${left.toFixed(1)}" y="${top.toFixed(1)}"${more}>${at}</text>`);
  text(
    'What two metres of lead add to a power from I²R at the near end',
    [frame.left, 30],
    ' font-size="17" font-weight="600"',
  );
  text(`at ${frequency / 1e3} kHz, against the load`, [frame.left, 50]);
  for (const load of [50, 100, 200, 500, 1000, 2000, 5000]) {
    parts.push(`<path d="M${x(load).toFixed(1)} ${frame.top}V${frame.bottom}" stroke="#d9dde1"/>`);
    text(load >= 1000 ? `${load / 1000} kΩ` : `${load} Ω`, [x(load), frame.bottom + 20], ' text-anchor="middle"');
  }
  for (const error of [1e-4, 1e-3, 1e-2, 0.1, 1, 10]) {
    parts.push(`<path d="M${frame.left} ${y(error).toFixed(1)}H${frame.right}" stroke="#d9dde1"/>`);
    text(`${Number((100 * error).toPrecision(3))} %`, [frame.left - 10, y(error) + 4], ' text-anchor="end"');
  }
  drawn.forEach(({ points }, i) => {
    const visible = points.filter(([, error]) => error >= errors.lowest);
    const path = visible
      .map(([load, error], k) => `${k === 0 ? 'M' : 'L'}${x(load).toFixed(1)} ${y(error).toFixed(1)}`)
      .join('');
    parts.push(
      `<path d="${path}" fill="none" stroke="${inks[i]}" stroke-width="2.5" stroke-dasharray="${dashes[i]}"/>`,
    );
  });
  // Names stand at the ends of their curves, in the order of those.
  const ends = drawn
    .map(({ name, points }, i) => ({ name, i, top: y(points.at(-1)[1]) }))
    .sort((a, b) => a.top - b.top);
  let free = 0;
  for (const { name, i, top } of ends) {
    const at = Math.max(top + 4, free);
    free = at + 18;
    text(name, [frame.right + 10, at], ` fill="${inks[i]}"`);
  }
  parts.push(`<path d="M${x(2000).toFixed(1)} ${frame.top}V${frame.bottom}" stroke="#30363d" stroke-dasharray="2 4"/>`);
  parts.push(
    `<rect x="${frame.left}" y="${frame.top}" width="${frame.right - frame.left}" height="${frame.bottom - frame.top}" fill="none" stroke="#30363d"/>`,
  );
  text(
    'load; a curve begins where its error turns positive',
    [(frame.left + frame.right) / 2, frame.bottom + 42],
    ' text-anchor="middle"',
  );
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" role="img" aria-labelledby="title" font-family="system-ui, sans-serif" font-size="13" fill="#30363d">
<title id="title">Error of a power from I²R at the near end of two metres of lead at 500 kHz, against the load</title>
<rect width="${width}" height="${height}" fill="#ffffff"/>
${parts.join('\n')}
</svg>
`;
}
