import { redirect } from "next/navigation";
import { optionalViewer } from "@/server/viewer";
import { ButtonLink } from "@/ui/button";
import { Page } from "@/ui/page";
import { RulerRowPicture } from "@/features/patterns/components/ruler-row-picture";

export default async function HomePage() {
  if ((await optionalViewer()) !== null) redirect("/patterns");
  return (
    <Page
      title="Which sizes came out as you promised?"
      intro="You worked one size. Your testers worked the rest, each with her own hands. Sizewright takes their gauge out of their measurements, and shows what is left: sizes that are graded wrong, an edging that adds more than you thought, and testers who were only off gauge."
      actions={
        <>
          <ButtonLink href="/sign-up">Sign up</ButtonLink>
          <ButtonLink href="/sign-in" look="quiet">
            Sign in
          </ButtonLink>
        </>
      }
    >
      <RulerRowPicture />
      <ol className="grid gap-8 sm:grid-cols-3">
        <Step title="Bring your numbers">
          Paste the finished measurements from your spreadsheet, sizes across, or bring a document. Centimetres, inches
          and fractions are all understood.
        </Step>
        <Step title="Add what testers reported">
          Their form’s table will do: you say which column is which. What cannot be read is told by row and column.
        </Step>
        <Step title="Read the gaps, mend the pattern">
          Every measurement in every size, with how sure one can be of it. Correct a count or an allowance, and see what
          every size becomes before you save.
        </Step>
      </ol>
    </Page>
  );
}

function Step({ title, children }: { readonly title: string; readonly children: string }) {
  return (
    <li>
      <h2 className="mb-2">{title}</h2>
      <p className="text-soft">{children}</p>
    </li>
  );
}
