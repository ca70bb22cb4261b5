import type { ServerResponse } from "node:http";

/** An answer of the server itself, where no page of the site can be drawn. */
export interface PlainAnswer {
  readonly status: number;
  readonly title: string;
  readonly says: string;
  /** When to come back, seconds. */
  readonly retryAfter?: number;
}

/** A page that works without scripts, style sheets or a database. It contains nothing from the request. */
export function plainPage({ title, says }: PlainAnswer): string {
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="robots" content="noindex">
<title>${title} · Sizewright</title>
<style>
body { margin: 0; background: #faf8f4; color: #2b2722; font: 1.0625rem/1.6 "Source Sans 3", system-ui, sans-serif; }
main { max-width: 34rem; margin: 0 auto; padding: 4rem 1.25rem; }
h1 { margin: 0 0 0.75rem; font: 600 1.75rem/1.25 "Source Serif 4", Georgia, serif; }
a { color: inherit; }
</style>
</head>
<body>
<main>
<h1>${title}</h1>
<p>${says}</p>
<p><a href="">Try again</a></p>
</main>
</body>
</html>
`;
}

/** The headers of such an answer. Nobody may store it, for the page itself comes back. */
export function plainHeaders({ retryAfter }: PlainAnswer): Record<string, string> {
  return {
    "Content-Type": "text/html; charset=utf-8",
    "Cache-Control": "no-store",
    ...(retryAfter === undefined ? {} : { "Retry-After": String(retryAfter) }),
  };
}

export function answerPlainly(response: ServerResponse, answer: PlainAnswer): void {
  response.writeHead(answer.status, plainHeaders(answer));
  response.end(plainPage(answer));
}
