import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, it } from "vitest";
import { explained, StartError } from "@/start/start-error";

let folder: string;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "sizewright-error-"));
});

afterEach(() => rmSync(folder, { recursive: true, force: true }));

function caught(attempt: () => unknown): unknown {
  try {
    attempt();
  } catch (error) {
    return explained(error);
  }
  throw new Error("it should have failed");
}

it("says that a file stands where the folder should be", () => {
  const file = join(folder, "data");
  writeFileSync(file, "");
  const sentence = `${file} is not a folder. Move that file away, or choose another folder with SIZEWRIGHT_FOLDER.`;
  expect(caught(() => mkdirSync(file, { recursive: true }))).toEqual(new StartError(sentence));
});

it("says which folder cannot be used for lack of permission", () => {
  // As root nothing is forbidden, so the system's error is made by hand.
  const error = Object.assign(new Error("EACCES: permission denied, mkdir '/srv/data'"), {
    code: "EACCES",
    path: "/srv/data",
  });
  expect(
    caught(() => {
      throw error;
    }),
  ).toEqual(
    new StartError(
      "Sizewright has no permission to use /srv/data. Give this user permission to read and write it, or choose another folder with SIZEWRIGHT_FOLDER.",
    ),
  );
});

it("leaves every other error as it is, for the log to tell where it came from", () => {
  const error = new Error("something else");
  expect(explained(error)).toBe(error);
});
