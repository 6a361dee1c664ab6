/** The figures of a chart as a table for those who hear the page. */
export interface FigureTable {
  readonly caption: string;
  readonly columns: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

export function HiddenFigures(props: { table: FigureTable }) {
  const { caption, columns, rows } = props.table;
  return (
    <div className="vh">
      <table>
        <caption>{caption}</caption>
        <thead>
          <tr>
            {columns.map((column) => (
              <th key={column} scope="col">
                {column}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.join('|')}>
              {row.map((cell, index) =>
                index === 0 ? (
                  <th key={columns[index]} scope="row">
                    {cell}
                  </th>
                ) : (
                  <td key={columns[index]}>{cell}</td>
                ),
              )}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
