/** What stands beside any plan: each caution once where it belongs, with its level and its source. */

import { standingNotices } from '@pitwright/engine';
import type { Cook, Formula, Piece, PitType } from '@pitwright/model';
import { quantity } from '@pitwright/model';
import { METRIC, say, US } from '@pitwright/words';
import { describe, expect, it } from 'vitest';

const piece = (more: Partial<Piece> = {}): Piece => ({
  id: 'a',
  letter: 'A',
  cut: 'loin-back-ribs',
  count: 1,
  bite: 'clean-bite',
  stages: [{ kind: 'bare', until: { by: 'bark' } }],
  ...more,
});
const formula = (more: Partial<Formula> = {}): Formula => ({
  id: 'f',
  name: 'Glaze',
  kind: 'sauce',
  lines: [{ ingredient: 'ketchup', amount: quantity('mass', 400, 'g') }],
  ...more,
});
const cook = (more: Partial<Cook> = {}, pit: PitType = 'offset', pitC = 121): Cook => ({
  id: 'demo',
  name: 'Demo',
  isDemo: true,
  rules: 'home-us',
  rulesTold: true,
  zone: 'Europe/Lisbon',
  table: { at: '2027-09-12T12:30:00Z', until: '2027-09-12T13:00:00Z' },
  chanceAsked: 0.9,
  guests: { adults: 4, children: 0 },
  hands: [],
  kitchen: { burners: 1, ovens: 1 },
  pit: { id: 'p', name: 'Pit', type: pit, temperature: quantity('temperature', pitC, '°C'), gauge: 'grate' },
  pieces: [piece()],
  formulas: [],
  ...more,
});
const ids = (of: Cook) => standingNotices(of).map((n) => n.id);
const texts = (of: Cook, settings = US) => standingNotices(of).map((n) => say(n, settings));

describe('standing notices', () => {
  it('have a level, a source, a place and words in both systems', () => {
    const all = standingNotices(
      cook(
        {
          guests: { adults: 4, children: 2, atRisk: true, allergies: ['fish'] },
          pieces: [
            piece({
              cut: 'chicken-leg',
              nonIntact: true,
              start: quantity('temperature', -2, '°C'),
              stages: [
                { kind: 'foil', until: { by: 'clock', after: quantity('time', 1, 'h') } },
                { kind: 'hold', until: { by: 'table' }, at: quantity('temperature', 55, '°C') },
              ],
            }),
          ],
          formulas: (['sauce', 'rub', 'brine', 'spritz'] as const).map((kind) =>
            formula({
              id: kind,
              kind,
              lines: [
                { ingredient: 'worcestershire_type', amount: quantity('mass', 10, 'g') },
                { ingredient: 'honey', amount: quantity('mass', 10, 'g') },
                { ingredient: 'my own blend', amount: quantity('mass', 10, 'g') },
              ],
            }),
          ),
        },
        'kettle',
        90,
      ),
    );
    expect(all.length).toBeGreaterThan(25);
    for (const n of all) {
      expect(['information', 'caution', 'stop']).toContain(n.level);
      expect(n.source).not.toBe('');
      expect(say(n, METRIC)).not.toBe('');
      expect(say(n, US)).not.toMatch(/undefined|NaN/);
    }
  });

  it('follow the chosen rules', () => {
    expect(texts(cook({ rules: 'home-us' }))[0]).toContain('145 °F');
    expect(texts(cook({ rules: 'uk' }), METRIC)[0]).toContain('70 °C');
    expect(texts(cook({ rules: 'uk' }), METRIC)[0]).toContain('2 min');
    expect(texts(cook({ pieces: [piece({ cut: 'chicken-leg' })] }))[0]).toContain('165 °F');
  });

  it('give a bird its time at temperature, but not where a guest is at risk', () => {
    const pieces = [piece({ cut: 'turkey-breast' })];
    expect(ids(cook({ pieces }))).toContain('safety.poultry-time');
    const atRisk = cook({ pieces, guests: { adults: 4, children: 0, atRisk: true } });
    expect(ids(atRisk)).not.toContain('safety.poultry-time');
    expect(ids(atRisk)).toContain('safety.guests-at-risk');
    expect(ids(cook())).not.toContain('safety.poultry-time');
  });

  it('name allergens, stop for a guest who named one in other words, and never take unknown for none', () => {
    const worcestershire = { ingredient: 'worcestershire_type', amount: quantity('mass', 10, 'g') } as const;
    const walnut = cook({
      guests: { adults: 4, children: 0, allergies: ['Tree nuts', 'Fish'] },
      formulas: [formula({ lines: [worcestershire] })],
    });
    expect(ids(walnut)).toContain('safety.allergens');
    expect(standingNotices(walnut).find((n) => n.id === 'safety.allergens-named')).toMatchObject({
      level: 'stop',
      concerns: { formulaId: 'f' },
      params: { allergens: 'fish' },
    });
    const unknown = cook({
      formulas: [formula({ lines: [{ ingredient: 'own rub', amount: quantity('mass', 9, 'g') }] })],
    });
    expect(ids(unknown)).toContain('safety.allergens-unknown');
    expect(ids(unknown)).not.toContain('safety.allergens');
  });

  it('keep the fire watched and its gas outdoors, unless nothing burns', () => {
    expect(ids(cook())).toEqual(
      expect.arrayContaining(['safety.carbon-monoxide', 'safety.fire-attended', 'safety.wood', 'safety.ash']),
    );
    expect(ids(cook({}, 'gas'))).toContain('safety.carbon-monoxide');
    expect(ids(cook({}, 'gas'))).not.toContain('safety.ash');
    expect(ids(cook({}, 'electric'))).not.toContain('safety.carbon-monoxide');
    expect(ids(cook({}, 'unknown'))).toContain('safety.carbon-monoxide');
    expect(ids(cook({}, 'offset', 95))).toContain('safety.pit-low');
  });

  it('shorten the time out on a hot day', () => {
    const limit = (airC: number) =>
      texts(cook({ weather: { air: quantity('temperature', airC, '°C') } })).find((t) =>
        t.startsWith('Out of'),
      );
    expect(limit(30)).toContain('2 h');
    expect(limit(33)).toContain('1 h');
  });
});
