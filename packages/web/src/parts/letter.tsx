/** Letters repeat their colours after H. */
const pieceClass = (letter: string): string =>
  `piece-${'ABCDEFGH'[(letter.toUpperCase().charCodeAt(0) - 65 + 8 * 26) % 8] ?? 'A'}`;

/** The letter of a piece: spoken, drawn and printed the same everywhere. */
export function Letter(props: { letter: string; large?: boolean }) {
  return (
    <span className={`letter ${pieceClass(props.letter)}${props.large ? ' large' : ''}`}>{props.letter}</span>
  );
}
