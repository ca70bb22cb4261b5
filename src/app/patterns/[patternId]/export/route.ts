import { exportPattern } from "@/features/patterns/loaders";
import { documentDownload } from "@/server/document-download";

export async function GET(
  request: Request,
  { params }: { readonly params: Promise<{ readonly patternId: string }> },
): Promise<Response> {
  const { patternId } = await params;
  const asked = new URL(request.url).searchParams.get("revision");
  return await documentDownload(async () => {
    const { document, number } = await exportPattern(patternId, asked);
    return { name: [document.name, `revision ${number}`], document };
  });
}
