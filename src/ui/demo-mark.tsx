/** Demo data is marked wherever it is shown. */
export function DemoMark() {
  return (
    <span
      className="shrink-0 rounded-full border border-line-strong px-2"
      title="Demo: pattern, people and numbers are invented"
    >
      Invented
    </span>
  );
}
