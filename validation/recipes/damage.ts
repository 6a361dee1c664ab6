/** Damages that a text suffers on its way: letters lost, swapped or doubled, words dropped, signs from elsewhere. */
import { Stream } from '../../packages/engine/src/numeric/chance.ts';

const STRANGE = [
  '½',
  '⁄',
  '–',
  '�',
  '🍅',
  ' ',
  '(',
  ')',
  '"',
  ',',
  '.',
  '/',
  '-',
  '#',
  '\t',
  '%',
  '0',
  '7',
  'x',
  'é',
  'ß',
  '漢',
];

/** Draws one after another from a seeded stream. */
export class Damager {
  readonly #stream: Stream;
  #at = 0;
  constructor(seed: number) {
    this.#stream = new Stream(seed, 'damage');
  }
  below(n: number): number {
    return Math.min(n - 1, Math.floor(this.#stream.uniform(this.#at++) * n));
  }
  damage(text: string): string {
    const at = this.below(Math.max(1, text.length));
    switch (this.below(9)) {
      case 0:
        return text.slice(0, at) + text.slice(at + 1);
      case 1:
        return text.slice(0, at) + (text[at + 1] ?? '') + (text[at] ?? '') + text.slice(at + 2);
      case 2:
        return text.slice(0, at) + STRANGE[this.below(STRANGE.length)] + text.slice(at);
      case 3:
        return text.slice(0, at) + String.fromCharCode(97 + this.below(26)) + text.slice(at + 1);
      case 4:
        return text.slice(0, at);
      case 5: {
        const words = text.split(' ');
        words.splice(this.below(words.length), 1);
        return words.join(' ');
      }
      case 6: {
        const words = text.split(' ');
        const i = this.below(words.length);
        words.splice(i, 0, words[this.below(words.length)]!);
        return words.join(' ');
      }
      case 7:
        return text.replace('\n', ' ');
      default:
        return text.toUpperCase().slice(0, at) + text.slice(at);
    }
  }
}
