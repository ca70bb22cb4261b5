import { receiveRequest } from "@/features/testing/photos/receive-mutations";

/** Takes photos that a tester or a designer sends; see src/server/body-limit.ts for how large they may be. */
export async function POST(request: Request): Promise<Response> {
  return await receiveRequest(request);
}
