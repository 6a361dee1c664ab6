import { Component, type ReactNode } from 'react';

/** Keeps the strip and the other places when one place cannot be drawn. */
export class Boundary extends Component<
  { children: ReactNode; fallback: (again: () => void) => ReactNode },
  { failed: boolean }
> {
  override state = { failed: false };

  static getDerivedStateFromError(): { failed: boolean } {
    return { failed: true };
  }

  override componentDidCatch(error: unknown): void {
    console.error(error);
  }

  override render(): ReactNode {
    return this.state.failed
      ? this.props.fallback(() => this.setState({ failed: false }))
      : this.props.children;
  }
}
