import { AskedFirst } from "@/ui/asked-first";
import { OneButtonForm } from "@/ui/one-button-form";
import type { LoadedTester } from "../loaders";
import { goOn, stop } from "../milestone-actions";

interface StopPanelProps {
  readonly tester: LoadedTester["tester"];
  readonly pageKey: string;
}

/** Her way out, asked first; once she has stopped, the way back for as long as there is one. */
export function StopPanel({ tester: { testerId, stoppedAt, call }, pageKey }: StopPanelProps) {
  const sends = { testerId, key: pageKey };
  if (stoppedAt !== null)
    return (
      <>
        <p className="mb-4">
          You have stopped. As long as nobody has been given your place, you can go on after all; what you typed is
          still there.
        </p>
        <OneButtonForm action={goOn} sends={sends} button="Go on after all" waiting="Going on …" />
      </>
    );
  return (
    <div className="mt-5">
      <AskedFirst question="I must stop">
        <p>
          You leave this test, and need give no reason. <bdi>{call.designerName}</bdi> sees that you stopped and can
          give your place to somebody else. What you have sent stays with the test; what you typed and did not send
          stays on your pages. You can undo this until your place has been filled.
        </p>
        <OneButtonForm action={stop} sends={sends} button="Yes, I must stop" waiting="Stopping …" look="main" />
      </AskedFirst>
    </div>
  );
}
