import { AskedFirst } from "@/ui/asked-first";
import { OneButtonForm } from "@/ui/one-button-form";
import type { LoadedTester } from "../loaders";
import { goOn, stop } from "../milestone-actions";

interface StopPanelProps {
  readonly tester: LoadedTester["tester"];
  readonly pageKey: string;
}

/** Lets a tester stop after a confirmation, and continue afterwards while the spot is still open. */
export function StopPanel({
  tester: { testerId, stoppedAt, stoppedByDesigner, freedAt, call },
  pageKey,
}: StopPanelProps) {
  const sends = { testerId, key: pageKey };
  if (stoppedByDesigner)
    return (
      <p>
        <bdi>{call.designerName}</bdi> ended your test. What you typed is still there, and you can read it.
      </p>
    );
  if (stoppedAt !== null)
    return (
      <>
        <p className="mb-4">
          {freedAt === null ? (
            "You have stopped."
          ) : (
            <>
              <bdi>{call.designerName}</bdi> had not heard from you for a while and opened your spot to others, so that
              your size is tested in time. That is all right: things come up.
            </>
          )}{" "}
          You can continue until your spot goes to somebody else; what you typed is still there.
        </p>
        <OneButtonForm action={goOn} sends={sends} button="Continue the test" waiting="One moment …" />
      </>
    );
  return (
    <div className="mt-5">
      <AskedFirst question="I have to stop">
        <p>
          You leave this test. You need not give a reason. <bdi>{call.designerName}</bdi> sees that you stopped and can
          give your spot to somebody else. What you have sent stays with the test; what you typed but did not send stays
          on your pages. You can undo this until your spot is filled.
        </p>
        <OneButtonForm action={stop} sends={sends} button="Yes, I have to stop" waiting="Stopping …" look="main" />
      </AskedFirst>
    </div>
  );
}
