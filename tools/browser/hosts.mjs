// What the app is served by in tests: our own command, or a host that knows nothing of it.

import { spawn } from 'node:child_process';
import { readFile } from 'node:fs/promises';
import { createServer } from 'node:http';
import net from 'node:net';
import path from 'node:path';

/** A port that nobody listens on. */
export async function freePort() {
  const server = net.createServer().listen(0, '127.0.0.1');
  await new Promise((resolve) => { server.once('listening', resolve); });
  const { port } = server.address();
  await new Promise((resolve) => { server.close(resolve); });
  return port;
}

/** `evenswath serve` with the files of a folder. `stop` ends it as a pulled plug would. */
export async function serve(program, app, notebook, port) {
  const child = spawn(program, ['serve', '--folder', notebook, '--app', app, '--port', String(port)], { stdio: ['ignore', 'ignore', 'pipe'] });
  let said = '';
  child.stderr.on('data', (data) => { said += data; });
  const ended = new Promise((resolve) => { child.once('exit', resolve); });
  const address = `http://localhost:${port}/`;
  for (let tries = 0; ; tries += 1) {
    if (await answers(address)) break;
    if (child.exitCode !== null || tries > 100) throw new Error(`the server does not answer: ${said}`);
    await new Promise((resolve) => { setTimeout(resolve, 50); });
  }
  return { address, stop: async () => { child.kill('SIGKILL'); await ended; } };
}

async function answers(address) {
  return fetch(`${address}api/1/health`).then((answer) => answer.ok, () => false);
}

const KINDS = { html: 'text/html', js: 'text/javascript', css: 'text/css', wasm: 'application/wasm', webmanifest: 'application/manifest+json', svg: 'image/svg+xml', png: 'image/png', woff2: 'font/woff2', txt: 'text/plain' };

/** A plain host of files: no header but the kind, under a path of its own. `spoil` may change what is sent. */
export async function host(folder, under, spoil = (_name, bytes) => bytes) {
  const server = createServer(async (request, response) => {
    const { pathname } = new URL(request.url, 'http://localhost');
    const name = pathname.startsWith(under) ? pathname.slice(under.length) || 'index.html' : '';
    try {
      if (!/^[\w.-]+$/.test(name)) throw new Error('not here');
      const bytes = await readFile(path.join(folder, name));
      response.writeHead(200, { 'content-type': KINDS[name.split('.').at(-1)] ?? 'application/octet-stream' });
      response.end(spoil(name, bytes));
    } catch {
      response.writeHead(404, { 'content-type': 'text/html' });
      response.end('<p>not here');
    }
  });
  server.listen(0, '127.0.0.1');
  await new Promise((resolve) => { server.once('listening', resolve); });
  return {
    address: `http://localhost:${server.address().port}${under}`,
    stop: async () => { server.closeAllConnections?.(); await new Promise((resolve) => { server.close(resolve); }); },
  };
}
