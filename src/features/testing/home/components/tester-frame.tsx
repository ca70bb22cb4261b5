import type { ReactNode } from "react";
import { Notice } from "@/ui/notice";
import { Page } from "@/ui/page";
import type { LoadedTester } from "../loaders";
import type { StepPage } from "../tester-steps";
import { BackToTest } from "./back-to-test";
import { StepList } from "./step-list";

interface TesterFrameProps {
  readonly loaded: LoadedTester;
  readonly step: StepPage;
  readonly title: string;
  readonly intro?: ReactNode;
  readonly children: ReactNode;
}

/** The frame of a tester's step: a link back above, the other steps beside it or, on a phone, below. */
export function TesterFrame({ loaded: { tester, steps }, step, title, intro, children }: TesterFrameProps) {
  const home = `/testing/${tester.testerId}`;
  return (
    <Page title={title} above={<BackToTest tester={tester} />} intro={intro}>
      {tester.call.status === "closed" ? (
        <Notice title="This test is closed">
          You can read everything you sent, but nothing can be changed any more.
        </Notice>
      ) : null}
      <div className="grid gap-x-12 gap-y-10 lg:grid-cols-[minmax(0,1fr)_17rem]">
        <div className="min-w-0">{children}</div>
        <aside className="min-w-0">
          <nav aria-label="Steps of your test">
            <StepList home={home} steps={steps} current={step} />
          </nav>
        </aside>
      </div>
    </Page>
  );
}
