import { AskedFirst } from "@/ui/asked-first";
import { OneButtonForm } from "@/ui/one-button-form";
import type { LoadedTester } from "../loaders";
import { goOn, stop } from "../milestone-actions";

interface StopPanelProps {
  readonly tester: LoadedTester["tester"];
  readonly pageKey: string;
}

/** Lets a tester stop after a confirmation. */
export function StopPanel({ tester: { testerId, call }, pageKey }: StopPanelProps) {
  return (
    <div className="mt-5">
      <AskedFirst question="I have to stop">
        <p>
          You leave this test. You need not give a reason. <bdi>{call.designerName}</bdi> sees that you stopped and can
          give your spot to somebody else. What you have sent stays with the test; what you typed but did not send stays
          on your pages. You can undo this until your spot is filled.
        </p>
        <OneButtonForm
          action={stop}
          sends={{ testerId, key: pageKey }}
          button="Yes, I have to stop"
          waiting="Stopping …"
          look="main"
        />
      </AskedFirst>
    </div>
  );
}

interface GoOnButtonProps {
  readonly testerId: string;
  readonly pageKey: string;
}

/** Lets a tester continue after they stopped, or their spot was opened, as long as it is still open. */
export function GoOnButton({ testerId, pageKey }: GoOnButtonProps) {
  return (
    <OneButtonForm
      action={goOn}
      sends={{ testerId, key: pageKey }}
      button="Continue the test"
      waiting="One moment …"
      look="main"
    />
  );
}
