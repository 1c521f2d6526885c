#!/bin/sh
# Draws what bench_scale printed as SVG: warm p99 of each question, in ms, over the pages of the index, both axes
# logarithmic. A question whose line is level takes the same time in an index of any size.
#   bench_scale FOLDER 100000 | tee out.txt && plot-scale.sh < out.txt > scale.svg
set -eu
exec awk '
  BEGIN {
    split("#1f5fa8 #b0413e #2f7d4f #8a5a00 #6a3d9a #333333 #00838f", colour, " ")
    left = 70; right = 560; top = 30; bottom = 330; low = 0.01; high = 1000; least = 1000; most = 1000000
  }
  function log10(v) { return log(v) / log(10) }
  function x(pages) { return left + (right - left) * (log10(pages) - log10(least)) / (log10(most) - log10(least)) }
  function y(ms) {
    ms = ms < low ? low : ms > high ? high : ms
    return bottom - (bottom - top) * (log10(ms) - log10(low)) / (log10(high) - log10(low))
  }
  function text(px, py, anchor, fill, words) {
    gsub(/&/, "\\&amp;", words)
    printf "<text x=\"%.0f\" y=\"%.0f\" text-anchor=\"%s\" fill=\"%s\">%s</text>\n", px, py, anchor, fill, words
  }
  /^[0-9]+ pages, / { pages = $1; next }
  /^  (find|parts|tube|a set) ?/ && NF >= 6 {
    name = $1
    for (i = 2; i <= NF - 5; ++i) name = name " " $i
    if (!(name in points)) { names[++count] = name; points[name] = "" }
    points[name] = points[name] sprintf("%.1f,%.1f ", x(pages), y($(NF - 1)))
  }
  END {
    print "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 760 380\" font-family=\"sans-serif\" font-size=\"12\">"
    print "<rect width=\"760\" height=\"380\" fill=\"#ffffff\"/>"
    for (p = least; p <= most; p *= 10) {
      printf "<path d=\"M%.0f %d V%d\" stroke=\"#dddddd\"/>\n", x(p), top, bottom
      text(x(p), bottom + 18, "middle", "#333333", p)
    }
    for (ms = low; ms <= high; ms *= 10) {
      printf "<path d=\"M%d %.0f H%d\" stroke=\"#dddddd\"/>\n", left, y(ms), right
      text(left - 8, y(ms) + 4, "end", "#333333", ms)
    }
    printf "<path d=\"M%d %.1f H%d\" stroke=\"#999999\" stroke-dasharray=\"5 4\"/>\n", left, y(20), right
    text(left + 4, y(20) - 5, "start", "#666666", "goal: 20 ms")
    for (i = 1; i <= count; ++i) {
      printf "<polyline points=\"%s\" fill=\"none\" stroke=\"%s\" stroke-width=\"2\"/>\n", points[names[i]], colour[i]
      printf "<path d=\"M%d %d h24\" stroke=\"%s\" stroke-width=\"2\"/>\n", right + 14, 40 + 20 * i, colour[i]
      text(right + 44, 44 + 20 * i, "start", "#333333", names[i])
    }
    text((left + right) / 2, bottom + 40, "middle", "#333333", "pages of the index")
    text(left, top - 12, "start", "#333333", "ms, warm p99, processor time")
    print "</svg>"
  }'
