import { useEffect, useRef } from 'preact/hooks';
import uPlot from 'uplot';
import 'uplot/dist/uPlot.min.css';
import { settings } from '#app/state/settings.ts';
import { type ChartContent, chartOptions, seen } from './chart-draw.ts';
import { followFingers } from './chart-fingers.ts';
import type { Window } from './window.ts';

interface Props {
  content: ChartContent;
  view: Window;
  height: number;
  label: string;
  onView: (change: (view: Window) => Window) => void;
  all: Window;
}

/** Draws a view once a frame, however many asked for it. */
function framed(draw: () => void): { ask: () => void; stop: () => void } {
  let frame = 0;
  return {
    ask: () => {
      frame ||= requestAnimationFrame(() => {
        frame = 0;
        draw();
      });
    },
    stop: () => cancelAnimationFrame(frame),
  };
}

/** All readings of an oven load; what is drawn is only what this view can show. */
export function BigChart({ content, view, height, label, onView, all }: Props) {
  const box = useRef<HTMLDivElement>(null);
  const latest = useRef(view);
  latest.current = view;
  const ask = useRef(() => {});
  const { units, theme } = settings.value;
  useEffect(() => {
    const element = box.current;
    if (!element) return;
    const width = element.clientWidth;
    // Every other px: denser lines cost a slow phone more than a frame, and show no more.
    const data = () => seen(content, latest.current, width / 2);
    const plot = new uPlot(chartOptions(content, { width, height }), data(), element);
    const draw = framed(() => {
      const { from, to } = latest.current;
      plot.batch(() => {
        plot.setData(data(), false);
        plot.setScale('x', { min: from / 1000, max: to / 1000 });
      });
    });
    ask.current = draw.ask;
    draw.ask();
    const fit = new ResizeObserver(() => {
      if (element.clientWidth > 0) plot.setSize({ width: element.clientWidth, height });
      draw.ask();
    });
    fit.observe(element);
    const leave = followFingers(plot.over, (change) => onView((before) => change(before, all)));
    return () => {
      draw.stop();
      fit.disconnect();
      leave();
      plot.destroy();
    };
  }, [content, height, units, theme]);
  useEffect(() => ask.current(), [view]);
  return <div ref={box} class="big-chart" role="img" aria-label={label} style={{ height: `${height}px` }} />;
}
