import { MODELLED_AIR_C, ordinaryMassKg } from '@pitwright/engine';
import { type CutId, fromSi, type Quantity, quantity } from '@pitwright/model';
import { useWords } from '../words.tsx';

export interface Remarks {
  readonly ofMass: (cut: CutId, mass: Quantity<'mass'> | undefined) => string | undefined;
  readonly ofHeat: (heat: Quantity<'temperature'> | undefined) => string | undefined;
}

/** What is worth a second look in a figure that is taken all the same: it may well be so. */
export function useRemarks(): Remarks {
  const { text, print } = useWords();
  return {
    ofMass: (cut, mass) => {
      const ordinary = mass && ordinaryMassKg(cut);
      if (!ordinary || (mass.si >= ordinary.min && mass.si <= ordinary.max)) return undefined;
      return text('web.remark.mass', {
        cut: print.cut(cut, 2),
        low: print.massKg(ordinary.min),
        high: print.massKg(ordinary.max),
      });
    },
    ofHeat: (heat) => {
      const { min, max } = MODELLED_AIR_C;
      const heatC = heat && fromSi('temperature', heat.si, '°C');
      if (heatC === undefined || (heatC >= min && heatC <= max)) return undefined;
      return text('web.remark.heat', {
        low: print.quantity(quantity('temperature', min, '°C')),
        high: print.quantity(quantity('temperature', max, '°C')),
      });
    },
  };
}
