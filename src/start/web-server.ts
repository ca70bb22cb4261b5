import { randomUUID } from "node:crypto";
import { createServer, type IncomingMessage, type Server, type ServerResponse } from "node:http";
import compression from "compression";
import next from "next";
import { refuseLargeBody } from "@/server/body-limit";
import { log } from "@/server/log";
import { inTurn } from "@/server/page-requests";
import { PageResponse } from "@/server/unavailable";
import { clientAddress, loggedPath } from "./incoming-request";
import { hasCode, StartError } from "./start-error";
import { contentSecurityPolicy, SECURITY_HEADERS } from "./security-headers";

interface Place {
  readonly host: string;
  readonly port: number;
  /** How many further ports to try where one is taken. */
  readonly further: number;
}

interface Site {
  readonly root: string;
  readonly dev: boolean;
  readonly trustedProxies: number;
}

export interface WebServer {
  readonly port: number;
  /** Begins to answer with the site's pages; before that every request is told to come back. */
  serve(site: Site): Promise<void>;
  close(): Promise<void>;
}

const LAST_ANSWERS_MS = 10_000;

/** How long a page that is still being written waits for more before it is sent. Each flush is a packet of its own. */
const FLUSH_AFTER_MS = 10;

/** A page is compressed anew for everybody, and one level more costs the server more than it spares the reader. */
const compressPage = compression({ level: 3 });
const compressFile = compression();

/** Takes a port at once, so that a taken one is told before anything else is started. */
export async function openWebServer(place: Place): Promise<WebServer> {
  const server = createServer({ ServerResponse: PageResponse });
  server.on("request", notYet);
  const port = await listen(server, place);
  let closeSite = (): Promise<void> => Promise.resolve();
  return {
    port,
    serve: async ({ root, dev, trustedProxies }) => {
      const site = next({ dir: root, dev, hostname: place.host, port, httpServer: server });
      closeSite = () => site.close();
      await site.prepare();
      const answer = site.getRequestHandler();
      server.off("request", notYet);
      server.on("request", (request, response) => {
        response.watch(prepare(request, response, { dev, trustedProxies }));
        compressSeldomFlushed(request, response);
        if (!refuseLargeBody(request, response)) void inTurn(request, response, () => answer(request, response));
      });
    },
    close: async () => {
      await closeServer(server);
      await closeSite();
    },
  };
}

function notYet(_request: IncomingMessage, response: ServerResponse): void {
  response.writeHead(503, { "Content-Type": "text/plain; charset=utf-8", "Retry-After": "2" });
  response.end("Sizewright is starting. Try again in a moment.\n");
}

function listen(server: Server, { host, port, further }: Place): Promise<number> {
  return new Promise((resolve, reject) => {
    const last = port + further;
    let trying = port;
    server.on("error", (error) => {
      if (!hasCode(error, "EADDRINUSE")) {
        const sentence = `Sizewright cannot use ${host}, port ${trying}: ${error.message}. Choose others with HOST and PORT.`;
        return reject(new StartError(sentence));
      }
      if (trying === last)
        return reject(new StartError(`Port ${port} is already in use. Choose another one with PORT.`));
      trying += 1;
      server.listen(trying, host);
    });
    server.once("listening", () => {
      const address = server.address();
      resolve(address === null || typeof address === "string" ? trying : address.port);
    });
    server.listen(trying, host);
  });
}

/** @returns the id under which this request is logged. */
function prepare(
  request: IncomingMessage,
  response: ServerResponse,
  { dev, trustedProxies }: Omit<Site, "root">,
): string {
  const requestId = randomUUID();
  const policy = contentSecurityPolicy({ nonce: randomUUID(), dev });
  const forwarded = request.headers["x-forwarded-for"];
  const { headers, socket } = request;
  headers["x-request-id"] = requestId;
  headers["x-sizewright-address"] = clientAddress(socket.remoteAddress ?? "", forwarded?.toString(), trustedProxies);
  headers["x-sizewright-path"] = request.url ?? "/";
  headers["content-security-policy"] = policy;
  response.setHeader("X-Request-Id", requestId);
  response.setHeader("Content-Security-Policy", policy);
  for (const [name, value] of Object.entries(SECURITY_HEADERS)) response.setHeader(name, value);
  logWhenAnswered(request, response, requestId);
  return requestId;
}

/** Compresses the answer. Next flushes after each piece of a page, of which there are hundreds. */
function compressSeldomFlushed(request: IncomingMessage, response: ServerResponse & { flush?: () => void }): void {
  const compress = request.url?.startsWith("/_next/") ? compressFile : compressPage;
  compress(request, response, () => undefined);
  const flush = response.flush?.bind(response);
  let due: NodeJS.Timeout | undefined;
  response.flush = () => {
    due ??= setTimeout(() => {
      due = undefined;
      flush?.();
    }, FLUSH_AFTER_MS);
  };
  response.once("close", () => clearTimeout(due));
}

function logWhenAnswered({ method, url }: IncomingMessage, response: ServerResponse, requestId: string): void {
  const path = loggedPath(url);
  const level = path.startsWith("/_next/") ? "debug" : "info";
  const begun = performance.now();
  response.once("close", () => {
    const ms = Math.round(performance.now() - begun);
    log[level]({ requestId, method, path, status: response.statusCode, ms }, "request");
  });
}

/** Lets the requests under way be answered, for a while. */
async function closeServer(server: Server): Promise<void> {
  const closed = new Promise<void>((resolve) => server.close(() => resolve()));
  server.closeIdleConnections();
  const cut = setTimeout(() => server.closeAllConnections(), LAST_ANSWERS_MS);
  await closed;
  clearTimeout(cut);
}
