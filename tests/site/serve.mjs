// The built site under its sub-path, as a plain file server would give it out; anything else is not found.
import { existsSync, readFileSync, statSync } from 'node:fs';
import { createServer } from 'node:http';
import { extname, join, normalize } from 'node:path';
import { gzipSync } from 'node:zlib';

const types = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.json': 'application/json',
  '.svg': 'image/svg+xml',
};

/** Resolves with the server and the address of the site's first page; `port` is any free one when not given. */
export function serveSite(folder, base, port = 0) {
  const server = createServer((request, response) => {
    const path = decodeURIComponent(new URL(request.url, 'http://site').pathname);
    const inside = path.startsWith(base) ? normalize(path.slice(base.length)) : undefined;
    const file = inside === undefined || inside.startsWith('..') ? undefined : fileAt(join(folder, inside));
    if (file === undefined) {
      response.writeHead(404).end();
      return;
    }
    const isText = extname(file) in types && request.headers['accept-encoding']?.includes('gzip');
    response.writeHead(200, {
      'content-type': types[extname(file)] ?? 'application/octet-stream',
      ...(isText ? { 'content-encoding': 'gzip' } : {}),
    });
    response.end(isText ? gzipSync(readFileSync(file)) : readFileSync(file));
  });
  return new Promise((resolve) =>
    server.listen(port, '127.0.0.1', () =>
      resolve({ server, address: `http://127.0.0.1:${server.address().port}${base}` }),
    ),
  );
}

function fileAt(path) {
  if (!existsSync(path)) return undefined;
  if (!statSync(path).isDirectory()) return path;
  const index = join(path, 'index.html');
  return existsSync(index) ? index : undefined;
}
