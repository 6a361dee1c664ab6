/** Goldfarb & Idnani's dual method, arrays counted from 1: min ½xᵀDx − dᵀx, Aᵀx ≥ b, the first meq as equalities. */
declare module 'quadprog' {
  export function solveQP(
    dMatrix: number[][],
    dVector: number[],
    aMatrix: number[][],
    bVector: number[],
    equalities?: number,
  ): { solution: number[]; value: number[]; message: string };
}
