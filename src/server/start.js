/**
 * Serves the built notebook. The page's own files carry the same security headers as everything
 * else, which the build's own server gives to dynamic answers only.
 */
import { createServer } from 'node:http';
import { networkInterfaces } from 'node:os';
import { securityHeaders } from './security-headers.js';

const host = process.env.HOST ?? '127.0.0.1';
const port = Number(process.env.PORT ?? 3000);

// A computed address, so that the type checker does not read the build.
const built = new URL('../../build/handler.js', import.meta.url).href;
const { handler } = await import(built).catch(() => {
  console.error('The notebook is not built yet. Run: npm run build');
  process.exit(1);
});

const server = createServer((request, response) => {
  for (const [name, value] of Object.entries(securityHeaders)) response.setHeader(name, value);
  handler(request, response, () => {
    response.writeHead(404, { 'content-type': 'text/plain; charset=utf-8' }).end('Not found');
  });
});

server.on('error', (error) => {
  if ('code' in error && error.code === 'EADDRINUSE') {
    console.error(`Something else is using port ${port}. Try another: PORT=${port + 1} npm start`);
  } else {
    console.error(`The notebook could not be served: ${error.message}`);
  }
  process.exit(1);
});

server.listen(port, host, () => {
  console.log(`\nMorning Measure is open at  http://localhost:${port}\n`);
  if (host === '127.0.0.1') {
    console.log('For other devices at home:  HOST=0.0.0.0 npm start');
  } else {
    for (const address of ownAddresses())
      console.log(`On this network:            http://${address}:${port}`);
  }
});

for (const signal of ['SIGINT', 'SIGTERM']) {
  process.on(signal, () => {
    server.close(() => process.exit(0));
    server.closeIdleConnections();
    setTimeout(() => process.exit(0), 2000).unref();
  });
}

/** The addresses at which other devices on the same network find this one. */
function ownAddresses() {
  return Object.values(networkInterfaces())
    .flatMap((addresses) => addresses ?? [])
    .filter((address) => address.family === 'IPv4' && !address.internal)
    .map((address) => address.address);
}
