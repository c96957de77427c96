import type { Drawing } from '../../lib/drawing/drawing.ts';
import type { DrawingView, LinkView, Markup } from '../page.ts';
import { toSvg } from './svg.ts';

/** A drawing on its panel of a page. */
export const drawingView = (drawing: Drawing, links: readonly LinkView[] = []): DrawingView => ({
  title: drawing.title,
  svg: toSvg(drawing) as Markup,
  says: '',
  links,
});
