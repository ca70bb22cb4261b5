import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { APIRequestContext } from "@playwright/test";
import { z } from "zod";
import { AppError } from "../src/server/errors";
import type { ActionAnswer } from "./access-action-row";
import type { PageAnswer } from "./access-page-row";

const manifestSchema = z.object({
  node: z.record(
    z.string(),
    z.object({ filename: z.string(), exportedName: z.string(), workers: z.record(z.string(), z.unknown()) }),
  ),
});

/** The folders below src/app that answer a request, as the table names them. */
export function routes(): string[] {
  return readdirSync("src/app", { recursive: true, encoding: "utf8" })
    .filter((file) => /(^|\/)(page\.tsx|route\.ts)$/.test(file))
    .map((file) => `/${file.split("/").slice(0, -1).join("/")}`)
    .sort();
}

/** The features' server actions, "feature/file name", as the table names them. */
export function actions(): string[] {
  return readdirSync("src/features", { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith("actions.ts"))
    .flatMap((file) => {
      const source = readFileSync(join("src/features", file), "utf8");
      const exported = source.matchAll(/^export (?:const|async function) (\w+)/gm);
      return Array.from(exported, ([, name]) => `${file} ${name}`);
    })
    .sort();
}

const UUID = /[\da-f]{8}(-[\da-f]{4}){3}-[\da-f]{12}/;

export interface Answered {
  readonly answer: PageAnswer;
  /** All that can be seen of it. */
  readonly seen: string;
}

/** What an address answers, whoever draws it: what is seen is the very text that is sent. */
export async function visit(request: APIRequestContext, path: string): Promise<Answered> {
  const response = await request.get(path, { maxRedirects: 0 });
  const seen = `${response.status()} ${unmarked(await response.text())}`;
  const onward = response.headers().location;
  return { answer: onward === undefined ? named(response.status()) : sameOriginPath(onward), seen };
}

/**
 * Without what differs from one answer to the next: ids that were asked for, the nonce, and the pieces in which Next sends
 * a page's lines as they come to be ready.
 */
function unmarked(text: string): string {
  const lines = text
    .replace(new RegExp(UUID, "g"), "[id]")
    .replaceAll('"])</script><script nonce="[id]">self.__next_f.push([1,"', "")
    .replaceAll('<script nonce="[id]">self.__next_f.push([1,"', "\\n")
    .replaceAll('"])</script>', "\\n");
  return lines
    .split("\\n")
    .filter((line) => line !== "")
    .toSorted()
    .join("\\n");
}

function named(status: number): PageAnswer {
  if (status === 404) return "nothing";
  return status === 200 ? "shown" : status;
}

function sameOriginPath(address: string): `/${string}` {
  return `/${new URL(address, "http://localhost").pathname.slice(1).replace(UUID, "[id]")}`;
}

/** Calls an action of the build as its page would. @param fill puts a world's ids into the address of that page. */
export async function act(
  request: APIRequestContext,
  action: string,
  {
    sends,
    fill,
  }: { sends: { values: unknown[] } | { form: Readonly<Record<string, string>> }; fill: (path: string) => string },
): Promise<ActionAnswer> {
  const { id, path } = findAction(action);
  const headers = { "Next-Action": id, Accept: "text/x-component" };
  const response =
    "form" in sends
      ? await request.post(fill(path), { headers, multipart: formArguments(sends.form), maxRedirects: 0 })
      : await request.post(fill(path), {
          headers: { ...headers, "Content-Type": "text/plain;charset=UTF-8" },
          data: JSON.stringify(sends.values),
          maxRedirects: 0,
        });
  const onward = response.headers()["x-action-redirect"];
  if (onward !== undefined) return sameOriginPath(onward.split(";", 1)[0] ?? "");
  const said = await response.text();
  if (response.status() !== 200) throw new Error(`${action} answered ${response.status()}: ${said.slice(0, 300)}`);
  const codes = ["signed-out", "not-found", "not-allowed"] as const;
  return codes.find((code) => said.includes(JSON.stringify(new AppError(code).message).slice(1, -1))) ?? "done";
}

/** The id by which a build knows an action, and a page that uses it. */
export function findAction(action: string): { id: string; path: string } {
  const manifest = manifestSchema.parse(
    JSON.parse(readFileSync(".next/server/server-reference-manifest.json", "utf8")),
  );
  const found = Object.entries(manifest.node).find(
    ([, { filename, exportedName }]) => `${filename} ${exportedName}` === `src/features/${action}`,
  );
  const [page] = Object.keys(found?.[1].workers ?? {});
  if (found === undefined || page === undefined) throw new Error(`No page of the build uses the action ${action}.`);
  return { id: found[0], path: page.replace(/^app/, "").replace(/\/page$/, "") || "/" };
}

/** A form's action is handed what it last answered, and the form; in React's own way of writing both down, and its order. */
function formArguments(form: Readonly<Record<string, string>>): FormData {
  const written = new FormData();
  for (const [name, value] of Object.entries(form)) written.append(`_1_${name}`, value);
  written.append("0", JSON.stringify(["$undefined", "$K1"]));
  return written;
}
