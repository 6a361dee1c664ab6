/** Comma-separated values after RFC 4180. */

/** Records of a text. A field in quotes may hold commas, line breaks and doubled quotes; a byte-order mark is dropped. */
export function parseCsv(text: string): string[][] {
  const records: string[][] = [];
  let record: string[] = [];
  let field = '';
  let quoted = false;
  const source = text.startsWith('\ufeff') ? text.slice(1) : text;
  const endRecord = () => {
    record.push(field);
    field = '';
    // A blank line is no record.
    if (record.length > 1 || record[0] !== '') records.push(record);
    record = [];
  };
  for (let i = 0; i < source.length; i++) {
    const c = source[i]!;
    if (quoted) {
      if (c !== '"') field += c;
      else if (source[i + 1] === '"') {
        field += '"';
        i++;
      } else quoted = false;
    } else if (c === '"' && field === '') quoted = true;
    else if (c === ',') {
      record.push(field);
      field = '';
    } else if (c === '\n' || c === '\r') {
      if (c === '\r' && source[i + 1] === '\n') i++;
      endRecord();
    } else field += c;
  }
  if (field !== '' || record.length > 0) endRecord();
  return records;
}

/** One record as a line, without its line break. */
export const csvLine = (fields: readonly string[]): string =>
  fields.map((field) => (/[",\r\n]/.test(field) ? `"${field.replaceAll('"', '""')}"` : field)).join(',');
