import { optionalViewer } from "@/server/viewer";
import { ButtonLink } from "@/ui/button";
import { Page } from "@/ui/page";
import { RulerRowPicture } from "@/features/patterns/components/ruler-row-picture";
import { DesignerHome } from "./designer-home";

export default async function HomePage() {
  if ((await optionalViewer()) !== null) return <DesignerHome />;
  return (
    <Page
      title="Which sizes come out as planned?"
      intro="You made one size. Your testers made the others, each with their own hands. Sizewright takes their gauge out of their measurements and shows what is left: sizes that are graded wrong, an edging that adds more than you thought, and testers who were simply off gauge."
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
        <Step title="Import your numbers">
          Paste the finished measurements from your spreadsheet, sizes across, or import a file. Centimetres, inches and
          fractions all work.
        </Step>
        <Step title="Add what testers reported">
          The table from their form will do: you say which column is which. Anything that cannot be read is listed by
          row and column.
        </Step>
        <Step title="See the differences, fix the pattern">
          Every measurement in every size, and how sure it is. Correct a count or an allowance and see what each size
          becomes before you save.
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
