// Run in the browser: what is to be seen of a debrief, in CSS pixels.
(() => {
  const root = document.documentElement;
  const shown = [...document.querySelectorAll('svg')].filter((svg) => svg.getBoundingClientRect().width > 0);
  const letters = [...document.querySelectorAll('main *')].flatMap((one) => {
    const own = [...one.childNodes].some((node) => node.nodeType === 3 && node.textContent.trim() !== '');
    if (!own || one.getBoundingClientRect().width === 0) return [];
    const svg = one.closest('svg');
    const drawn = svg === null ? 1 : svg.getBoundingClientRect().width / svg.viewBox.baseVal.width;
    return [Number.parseFloat(getComputedStyle(one).fontSize) * drawn];
  });
  const outside = [...document.querySelectorAll('main *')].filter((one) => {
    const box = one.getBoundingClientRect();
    return box.width > 0 && (box.right > root.clientWidth + 1 || box.left < -1);
  });
  const drawings = shown.filter((svg) => svg.getAttribute('role') === 'img');
  const curve = drawings.find((svg) => svg.closest('.curve') !== null) ?? null;
  const mark = document.querySelector('.watermark');
  return {
    overflow: root.scrollWidth - root.clientWidth,
    outside: outside.map((one) => one.tagName),
    smallest: Math.min(...letters),
    curve:
      curve === null
        ? null
        : { width: curve.getBoundingClientRect().width, points: curve.querySelectorAll('circle').length },
    curves: drawings.length,
    mark:
      mark === null
        ? null
        : {
            text: mark.textContent,
            position: getComputedStyle(mark).position,
            display: getComputedStyle(mark).display,
          },
  };
})();
