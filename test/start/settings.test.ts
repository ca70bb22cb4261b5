import { resolve } from "node:path";
import { expect, it } from "vitest";
import { readSettings } from "@/start/settings";

it("are complete without any given", () => {
  expect(readSettings([], {})).toEqual({
    mode: "production",
    host: "0.0.0.0",
    port: 3000,
    databaseUrl: undefined,
    address: undefined,
    secret: undefined,
    trustedProxies: 0,
    folder: resolve(".sizewright"),
  });
});

it("keep a demo to this machine unless told otherwise", () => {
  expect(readSettings(["--demo"], {})).toMatchObject({ mode: "demo", host: "127.0.0.1" });
  expect(readSettings(["--demo"], { HOST: "0.0.0.0" })).toMatchObject({ host: "0.0.0.0" });
});

it("take an empty one for absent", () => {
  expect(readSettings([], { PORT: "", DATABASE_URL: "" })).toMatchObject({ port: 3000, databaseUrl: undefined });
});

it("find the folder from wherever PostgreSQL is started", () => {
  expect(readSettings([], { SIZEWRIGHT_FOLDER: "data/größe neu" }).folder).toBe(resolve("data/größe neu"));
  expect(readSettings([], { SIZEWRIGHT_FOLDER: "/srv/größe neu" }).folder).toBe("/srv/größe neu");
  expect(readSettings([], { SIZEWRIGHT_FOLDER: "" }).folder).toBe(resolve(".sizewright"));
});

it.each([
  [[], { PORT: "http" }, "PORT must be a whole number"],
  [[], { PORT: "65536" }, "PORT is too large"],
  [[], { PHOTOS_URL: "s3://storage.example/photos" }, "PHOTOS_URL must name a bucket"],
  [[], { PHOTOS_URL: "s3://KEY:SECRET@storage.example" }, "PHOTOS_URL must name a bucket"],
  [[], { TRUSTED_PROXIES: "many" }, "TRUSTED_PROXIES must be a whole number"],
  [["--fast"], {}, "Known flags: --demo, --dev."],
  [["--demo", "--dev"], {}, "--demo and --dev can't be used together"],
])("%j %j are refused: %s", (flags, environment, says) => {
  expect(() => readSettings(flags, environment)).toThrow(says);
});
