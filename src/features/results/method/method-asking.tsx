/** How it is worked out what to ask next. */
export function MethodAsking() {
  return (
    <div className="max-w-3xl text-soft">
      <p className="mb-3">
        For everything that could be asked, the calculation foresees how certain each difference would be afterwards, in
        this size and in all others, and how many more would then be certainly as planned or certainly different.
      </p>
      <ul className="list-disc space-y-1 pl-5">
        <li>
          Measuring again makes a new error with the tape. The garment stays the one it is, so half of what one
          measurement may be off by stays too.
        </li>
        <li>A measurement that may be a mistake is worth more to have again than one that nobody doubts.</li>
        <li>One more tester brings all measurements of their size, in another garment.</li>
        <li>Measuring an edging or seam by itself shows whether it is the cause.</li>
      </ul>
      <p className="mt-3">
        The numbers are averages over what may come out, each for one question alone. What is settled now may become
        uncertain again, and counts against a question.
      </p>
    </div>
  );
}
