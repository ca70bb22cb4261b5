/** The package's published types are of another server's requests. */
declare module "compression" {
  import type { IncomingMessage, ServerResponse } from "node:http";

  /** Compresses what is then written to the response, in what the request accepts. */
  export default function compression(settings?: {
    /** Of gzip, 1 to 9. */
    readonly level: number;
  }): (request: IncomingMessage, response: ServerResponse, next: () => void) => void;
}
