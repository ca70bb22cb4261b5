/** The package's published types are of another server's requests. */
declare module "compression" {
  import type { IncomingMessage, ServerResponse } from "node:http";

  /** Compresses what is then written to the response, in what the request accepts. */
  export default function compression(): (request: IncomingMessage, response: ServerResponse, next: () => void) => void;
}
