"use client";

import { DivideFields } from "./divide-fields";
import { EdgeFields, MarkFields, ShortRowFields } from "./edge-fields";
import { EndFields } from "./end-fields";
import { JoinFields } from "./join-fields";
import { SectionFields } from "./section-fields";
import { StartFields } from "./start-fields";
import type { StepEdit } from "./step-edit";
import { WorkFields } from "./work-fields";

/** The inputs of a step. */
export function StepFields({ step, ...edit }: StepEdit) {
  switch (step.do) {
    case "start":
      return <StartFields {...edit} step={step} />;
    case "work":
      return <WorkFields {...edit} step={step} />;
    case "section":
      return <SectionFields {...edit} step={step} />;
    case "add":
    case "bind-off":
    case "hold":
    case "leave":
      return <EdgeFields {...edit} step={step} />;
    case "short-rows":
      return <ShortRowFields {...edit} step={step} />;
    case "mark":
      return <MarkFields {...edit} step={step} />;
    case "unmark":
      return null;
    case "divide":
      return <DivideFields {...edit} step={step} />;
    case "join":
      return <JoinFields {...edit} step={step} />;
    case "end":
      return <EndFields {...edit} step={step} />;
  }
}
