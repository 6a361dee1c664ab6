/** Why one piece is where it is, at the moments worth a word: what is said of it, its heat and its inside. */
import {
  type AcrossFaces,
  acrossFaces,
  type CookForecast,
  explainPiece,
  type HeatColumn,
  heatAtW,
  heatTotalsJ,
  pieceInside,
  tellingMoments,
} from '@pitwright/engine';
import type { Cook, Said } from '@pitwright/model';

export interface Told {
  readonly at: string;
  readonly elapsedS: number;
  readonly said: Said;
  /** Of one item [W]. */
  readonly heat: Readonly<Record<HeatColumn, number>>;
  readonly inside: {
    /** At the open face, half way to what lies at the bottom, and there [°C]. */
    readonly topC: number;
    readonly betweenC: number;
    readonly bottomC: number;
    readonly dryM: number;
    /** From the other face, where it is another. */
    readonly otherDryM?: number;
  };
}

export interface Why {
  readonly top: AcrossFaces['top'];
  readonly bottom: AcrossFaces['bottom'];
  readonly told: readonly Told[];
  /** From meat-on to the table [J]. */
  readonly totalsJ: Readonly<Record<HeatColumn, number>>;
}

/** Of a row from face to face, straight between its depths. */
function at(depthShares: readonly number[], row: readonly number[], share: number): number {
  const next = Math.max(
    1,
    depthShares.findIndex((depth) => depth >= share),
  );
  const [from, to] = [depthShares[next - 1]!, depthShares[next]!];
  return row[next - 1]! + ((share - from) / (to - from)) * (row[next]! - row[next - 1]!);
}

/** @param tableS the serving hour, from its meat-on */
export function whyOf(
  cook: Cook,
  forecast: CookForecast,
  pieceId: string,
  onAt: string,
  tableS: number,
): Why {
  const inside = pieceInside(cook, forecast, pieceId);
  const { top, bottom, depthShares, temperaturesC, frontM, otherFrontM } = acrossFaces(inside);
  const last = inside.timesS.length - 1;
  const told = tellingMoments(inside, tableS).map((elapsedS) => {
    const found = inside.timesS.findIndex((time) => time >= elapsedS);
    const entry = found < 0 ? last : found;
    const row = temperaturesC[entry]!;
    return {
      at: new Date(Date.parse(onAt) + elapsedS * 1000).toISOString(),
      elapsedS,
      said: explainPiece(inside, elapsedS, onAt),
      heat: heatAtW(inside, elapsedS),
      inside: {
        topC: row[0]!,
        betweenC: at(depthShares, row, 0.5),
        bottomC: row.at(-1)!,
        dryM: frontM[entry]!,
        ...(otherFrontM && { otherDryM: otherFrontM[entry]! }),
      },
    };
  });
  return { top, bottom, told, totalsJ: heatTotalsJ(inside, tableS) };
}
