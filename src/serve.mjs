// Serves the built site on this machine: node src/serve.mjs [folder]. Port 4321, or the next one that is free.
// Headers are those of the site's own file _headers.
import { createReadStream } from "node:fs";
import { readFile, stat } from "node:fs/promises";
import { createServer } from "node:http";
import { extname, join, resolve, sep } from "node:path";
import { pipeline } from "node:stream";
import { createGzip } from "node:zlib";
import { headersFor, readRules } from "./headers.mjs";

const root = resolve(process.argv[2] ?? "dist");
const headersFile = join(root, "_headers");
const firstPort = Number(process.env.PORT ?? 4321);
const lastPort = firstPort + 20;

const types = {
  ".html": "text/html; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".json": "application/json",
  ".svg": "image/svg+xml",
  ".png": "image/png",
  ".woff2": "font/woff2",
  ".wasm": "application/wasm",
  ".webmanifest": "application/manifest+json",
  ".txt": "text/plain; charset=utf-8",
  ".csv": "text/csv; charset=utf-8",
};

/** Whether a file of this type gets smaller when it is packed, and the asker can unpack it. */
const isPacked = (type, request) =>
  /^text\/|json$|svg|wasm/.test(type) && /\bgzip\b/.test(request.headers["accept-encoding"] ?? "");

const kindOf = async (path) => {
  try {
    const found = await stat(path);
    return found.isDirectory() ? "folder" : "file";
  } catch {
    return "nothing";
  }
};

/** What a path of an address asks for: a file, a place to go to instead, or nothing. */
async function find(pathname) {
  let path;
  try {
    path = join(root, decodeURIComponent(pathname));
  } catch {
    return {};
  }
  if (path !== root && !path.startsWith(root + sep)) return {};
  const kind = await kindOf(path);
  if (path === headersFile) return {};
  if (kind === "file") return { file: path };
  const index = join(path, "index.html");
  if (kind !== "folder" || (await kindOf(index)) !== "file") return {};
  return pathname.endsWith("/") ? { file: index } : { moved: `${pathname}/` };
}

const rules = async () => readRules(await readFile(headersFile, "utf8").catch(() => ""));

async function answer(request, response) {
  if (request.method !== "GET" && request.method !== "HEAD") {
    response.writeHead(405, { allow: "GET, HEAD" }).end();
    return;
  }
  const { pathname, search } = new URL(request.url, "http://localhost");
  const { file, moved } = await find(pathname);
  if (moved) {
    response.writeHead(301, { location: moved.replace(/^\/+/, "/") + search }).end();
    return;
  }
  const send = file ?? join(root, "404.html");
  const type = types[extname(send)] ?? "application/octet-stream";
  const packed = isPacked(type, request);
  response.writeHead(file ? 200 : 404, {
    "content-type": type,
    ...(packed && { "content-encoding": "gzip" }),
    vary: "accept-encoding",
    ...headersFor(await rules(), pathname),
  });
  if (request.method === "HEAD") response.end();
  else pipeline([createReadStream(send), ...(packed ? [createGzip()] : []), response], () => {});
}

if ((await kindOf(join(root, "index.html"))) !== "file") {
  console.error(`There is no built site in ${root}. Build it with: npm run build`);
  process.exit(1);
}

const server = createServer((request, response) => {
  answer(request, response).catch(() => {
    // Who left meanwhile can be told nothing; trying to would end the server.
    if (response.headersSent) response.destroy();
    else response.writeHead(500).end();
  });
});

let port = firstPort;
server.on("error", (error) => {
  if (error.code !== "EADDRINUSE" || port >= lastPort) {
    console.error(`The site cannot be served: ${error.message}`);
    process.exit(1);
  }
  port += 1;
  server.listen(port, "localhost");
});
server.on("listening", () => console.log(`Charge-Air Reference: http://localhost:${port}/`));
server.listen(port, "localhost");
