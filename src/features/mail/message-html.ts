import { escapeXml } from "@/server/escape-xml";
import { greeting } from "./greeting-computed";
import { FEWER, lastLine, type WrittenMessage, type WrittenPart } from "./message-text";

/**
 * A message as HTML for mail readers: one column, no pictures, nothing fetched. Readers that know dark mode get its colours;
 * those that invert by themselves find dark text on light, which they can.
 */
export function messageHtml({ subject, name, parts, from, because, site, fewer }: WrittenMessage): string {
  const body = [
    `<p>${escaped(greeting(name))}</p>`,
    ...parts.map(partHtml),
    ...(from === null ? [] : [`<p>${escaped(from.name)}</p>`]),
  ].join("\n");
  return `<!doctype html>
<html lang="en" dir="auto">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width">
<meta name="color-scheme" content="light dark">
<meta name="supported-color-schemes" content="light dark">
<title>${escaped(subject)}</title>
<style>${STYLE}</style>
</head>
<body>
<div class="sheet">
${body}
</div>
<p class="last">${escaped(lastLine(because, site))}${fewer === null ? "" : ` <a href="${escaped(fewer)}">${FEWER}</a>.`}</p>
</body>
</html>
`;
}

const STYLE = `
:root { color-scheme: light dark; }
body { margin: 0; padding: 16px; background: #f6f0e4; color: #231d18; font: 16px/1.5 system-ui, -apple-system, "Segoe UI", sans-serif; }
.sheet { max-width: 560px; margin: 0 auto; padding: 4px 20px; background: #fffdf8; border: 1px solid #dccfb9; border-radius: 8px; overflow-wrap: anywhere; }
blockquote { margin: 16px 0; padding: 2px 0 2px 14px; border-left: 3px solid #8d7f6d; white-space: pre-line; }
table { border-collapse: collapse; margin: 16px 0; }
th { text-align: left; font-weight: normal; color: #665a4e; padding: 3px 14px 3px 0; vertical-align: top; white-space: nowrap; }
td { padding: 3px 0; vertical-align: top; }
.button { display: inline-block; padding: 11px 18px; border-radius: 6px; background: #9c2430; color: #ffffff; font-weight: 600; text-decoration: none; }
.address { font-size: 14px; color: #665a4e; }
.address a { color: #665a4e; }
.last { max-width: 560px; margin: 14px auto; font-size: 14px; color: #665a4e; overflow-wrap: anywhere; }
.last a { color: #665a4e; }
@media (prefers-color-scheme: dark) {
  body { background: #1b1612; color: #f2e9dc; }
  .sheet { background: #251f19; border-color: #453a2f; }
  blockquote { border-color: #95867a; }
  th, .address, .address a, .last, .last a { color: #bfb1a0; }
  .button { background: #f39a90; color: #15110d; }
}
`;

function partHtml(part: WrittenPart): string {
  if ("text" in part) return `<p>${escaped(part.text).replaceAll("\n", "<br>")}</p>`;
  if ("quote" in part) return `<blockquote>${escaped(part.quote)}</blockquote>`;
  if ("facts" in part) return `<table>${part.facts.map(factHtml).join("")}</table>`;
  const address = escaped(part.address);
  return `<p><a class="button" href="${address}">${escaped(part.link)}</a></p>
<p class="address">Or open this address: <a href="${address}">${address}</a></p>`;
}

function factHtml([label, value]: readonly [string, string]): string {
  return `<tr><th scope="row">${escaped(label)}</th><td>${escaped(value)}</td></tr>`;
}

/** Older mail readers don't know `&apos;`, which came into HTML from XML. */
function escaped(text: string): string {
  return escapeXml(text).replaceAll("&apos;", "&#39;");
}
