import { TABLE, TABLE_HEAD, TABLE_ROW } from "@/ui/table-frame";

/** Invented, to show the shape. */
const EXAMPLE = [
  ["", "To fit bust", "76–81", "82–87", "88–93"],
  ["A", "Bust around", "90.5", "96.5", "102"],
  ["", "Stitches at the bust", "76", "82", "86"],
  ["B", "Upper arm around", "31", "33.5", "36"],
  ["C", "Body length", "52", "53", "54"],
];

/** An example of a table that can be pasted. */
export function PasteExample() {
  return (
    <figure className="max-w-2xl text-soft">
      <figcaption className="mb-2 text-sm">
        Your table can look like this example. Centimetres or inches, 38.5, 38,5 or 12 3/8, sizes across or down all
        work.
      </figcaption>
      <div
        role="region"
        aria-label="An example table"
        tabIndex={0}
        className="overflow-x-auto rounded-sheet border border-dashed border-line-strong"
      >
        <table className={`${TABLE} text-sm`}>
          <thead className={TABLE_HEAD}>
            <tr>
              <th scope="col">Letter</th>
              <th scope="col">Measurement</th>
              {["XS", "S", "M"].map((size) => (
                <th key={size} scope="col" className="text-right">
                  {size}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {EXAMPLE.map(([letter, label, ...numbers]) => (
              <tr key={label} className={TABLE_ROW}>
                <td>{letter}</td>
                <td className="whitespace-nowrap">{label}</td>
                {numbers.map((number) => (
                  <td key={number} className="text-right">
                    {number}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </figure>
  );
}
