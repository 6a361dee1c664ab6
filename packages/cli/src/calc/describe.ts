import { type CalcSpec, calcs, type InputSpec } from '@pitwright/engine';
import { fromSi } from '@pitwright/model';

function takes(input: InputSpec): string {
  switch (input.type) {
    case 'quantity': {
      const range = input.limits ? ` [${input.limits}]` : '';
      if (input.byDefault === undefined) return `${input.kind}${range}`;
      const unit = input.limits?.includes(' ')
        ? input.limits.slice(input.limits.indexOf(' ') + 1)
        : undefined;
      const value =
        input.kind === 'temperature'
          ? `${Number(input.byDefault.toPrecision(9))} °C`
          : unit
            ? `${Number(fromSi(input.kind, input.byDefault, unit).toPrecision(9))} ${unit}`
            : `${Number(input.byDefault.toPrecision(9))}`;
      return `${input.kind}${range} = ${value}`;
    }
    case 'word':
      return `{${input.words.join(' ')}}${input.byDefault ? ` = ${input.byDefault}` : ''}`;
    case 'text':
      return `text${input.byDefault ? ` = ${input.byDefault}` : ''}`;
    case 'curve':
      return 'curve, such as 0 min 54.4 °C | 60 min 65.6 °C';
    case 'mix':
      return 'mix, such as ketchup 480 g | vinegar_cider_5 0.5 cup';
  }
}

/** What one calc takes and answers. */
export function describeCalc(calc: CalcSpec): string {
  const lines = [`${calc.name}: ${calc.summary}`, '', 'Inputs'];
  for (const input of calc.inputs) {
    const remark = input.remark ? ` (${input.remark})` : '';
    lines.push(`  --${input.name}${input.optional ? ' ?' : ''}  ${takes(input)}${remark}`);
  }
  lines.push('', 'Outputs, the first unless --output names another');
  for (const output of calc.outputs)
    lines.push(`  ${output.name}  ${output.unitFrom ? `(unit of --${output.unitFrom})` : output.unit}`);
  lines.push('', `Source  ${calc.source}`, `Page    docs/models/${calc.page}`);
  return lines.join('\n');
}

/** Every calc by room, one a line. */
export function listCalcs(): string {
  const width = Math.max(...calcs.map((calc) => calc.name.length));
  const lines: string[] = [];
  let room = '';
  for (const calc of calcs) {
    if (calc.room !== room) lines.push(...(room ? [''] : []), calc.room);
    room = calc.room;
    lines.push(`  ${calc.name.padEnd(width)}  ${calc.summary}`);
  }
  return lines.join('\n');
}
