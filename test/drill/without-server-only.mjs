import { register } from "node:module";

// Pages need Next whole, which is not there under the condition that server-only asks for.
const resolve = `export async function resolve(specifier, context, next) {
  return specifier === "server-only" ? { url: "data:text/javascript,", shortCircuit: true } : next(specifier, context);
}`;
register(`data:text/javascript,${encodeURIComponent(resolve)}`);
