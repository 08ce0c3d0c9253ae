#include "joint/sheets/joint_page_words.h"

namespace sheerlap {

const char* const page_links = R"html(<nav aria-label="On this page">
<a href="#checks">Checks and cautions</a>
<a href="#hull" class="scripted">This hull</a>
<a href="#plan">Plan</a>
<a href="#charts">Gap and beads</a>
<a href="#hole" class="scripted">Chosen hole</a>
<a href="#schedule">Drilling schedule</a>
</nav>
)html";

const char* const hull_controls = R"html(<section id="hull" aria-labelledby="hull-name">
<h2 id="hull-name">This hull</h2>
<div class="controls scripted">
<label>Hull number <input id="hull-number" list="hull-list" autocomplete="off" size="14"></label>
<datalist id="hull-list"></datalist>
<output id="hull-count"></output>
<button type="button" id="save">Save to a file</button>
<label class="button">Load from a file <input type="file" id="load" accept=".csv,text/csv"></label>
<button type="button" id="clear">Clear this hull</button>
<button type="button" id="print">Print</button>
</div>
<p class="print-only">Hull number: <span id="hull-printed">____________________</span></p>
<p id="message" role="status" aria-live="polite" class="scripted"></p>
<p class="hint scripted">Ticks and gap readings are kept by this browser on this device, by boat,
layout and hull number; save them to a file to keep or pass on. The file is CSV: side, girth on the
drill line, mark, gap at the hull’s top and at the lip’s low edge, state, drilled; always in mm.</p>
</section>
)html";

const char* const plan_words = R"html(<p class="hint">Seen from above, bow to the left.
<span class="scripted">Keys: Tab goes to the holes here, in each chart and in the schedule; arrow
keys, Home and End move from hole to hole, Page Up and Page Down by ten; Enter chooses a hole, Space
ticks it as drilled. What is chosen in one place is chosen in all.</span></p>
<div class="controls scripted" role="group" aria-label="Size of the plan">
<button type="button" data-zoom="1" aria-pressed="true">Whole boat</button>
<button type="button" data-zoom="2" aria-pressed="false">Twice</button>
<button type="button" data-zoom="4" aria-pressed="false">Four times</button>
</div>
)html";

const char* const plan_legend = R"html(<ul class="legend">
<li><svg viewBox="0 0 44 14" aria-hidden="true"><path class="sheer" d="M0 4H44"/><path class="drill-line" d="M0 10H44"/></svg> sheer (heavy) and drill line (chain)</li>
<li><svg viewBox="0 0 44 14" aria-hidden="true"><path class="opening" d="M0 7H44"/></svg> opening: no joint</li>
<li><svg viewBox="0 0 44 14" aria-hidden="true"><path class="clearance" d="M0 1H44V13H0Z"/><path class="keepout sample" d="M10 1H34V13H10Z"/></svg> keep-out, hatched, in its clearance</li>
<li><svg viewBox="0 0 44 14" aria-hidden="true"><path class="corner" d="M22 1L28 7L22 13L16 7Z"/></svg> corner</li>
<li><svg viewBox="0 0 44 14" aria-hidden="true"><circle class="dot" cx="8" cy="7" r="4"/><circle class="dot done" cx="22" cy="7" r="4"/><circle class="ring shown" cx="36" cy="7" r="6"/><circle class="dot" cx="36" cy="7" r="3"/></svg> hole; ticked as drilled; chosen</li>
<li><svg viewBox="0 0 44 14" aria-hidden="true"><path class="fit good" d="M0 7H44"/></svg> G: gap good</li>
<li><svg viewBox="0 0 44 14" aria-hidden="true"><path class="fit tight" d="M0 7H44"/></svg> T: tight</li>
<li><svg viewBox="0 0 44 14" aria-hidden="true"><path class="fit wide" d="M0 7H44"/></svg> W: wide</li>
<li><svg viewBox="0 0 44 14" aria-hidden="true"><path class="fit interference" d="M0 7H44"/></svg> X: interference</li>
)html";

const char* const chart_words =
    R"html(<h2 id="charts-name">Gap and beads along the girth</h2>
<p class="hint">The gap is square to the hull’s outer face, at three depths: <b>hull top</b> (depth
0, full line), <b>middle</b> of the lap (dashes) and <b>low edge</b> of the lip (dots). Heavy long
dashes are the adhesive’s window. Girth runs along the sheer, starboard and port from the bow datum
aft, the transom from its starboard corner. The line on top is the fit: G good, T tight, W wide, X
interference.</p>
)html";

const char* const hole_panel = R"html(<aside id="hole" aria-labelledby="hole-name">
<h2 id="hole-name">Chosen hole</h2>
<p class="because" id="hole-because">None is chosen: choose one in the plan, a chart or the schedule.</p>
<p id="hole-note"></p>
<div id="hole-open" hidden>
<div class="controls scripted">
<button type="button" data-step="-1">Previous</button>
<button type="button" data-step="1">Next</button>
<label><input type="checkbox" id="hole-drilled"> Drilled</label>
</div>
<form id="reading" class="controls scripted" aria-label="Gap reading at this hole">
<label>Gap at hull top, {0} <input id="gap-top" inputmode="decimal" autocomplete="off" size="7"></label>
<label>Gap at low edge, {0} <input id="gap-low" inputmode="decimal" autocomplete="off" size="7"></label>
<button type="button" id="gap-sign" aria-label="Turn the sign of the gap: minus is interference">±</button>
<label>State <select id="gap-state"><option value="dry">dry, free</option><option value="held">dry, held</option><option value="after">after adhesive</option></select></label>
<button type="submit">Keep reading</button>
<p class="small">0: the parts touch. Minus: interference, by how much they are in each other’s way. What is
typed is also kept when you go to another hole.</p>
<output id="reading-says"></output>
</form>
<p class="small" id="hole-drawn"></p>
<figure>
<div id="section"></div>
<figcaption>Section at the hole, in {0}, vertical and square to the sheer in plan; outboard is to the right.
The fastener is drawn by its length from the lip’s outer face.
Drawn to one scale both ways; a screen is no ruler. Printed at 100 % it is full size: measure the
check bar first.</figcaption>
</figure>
<table class="small values"><caption>All of this hole</caption><tbody id="hole-values"></tbody></table>
</div>
</aside>
)html";

const char* const filter_start =
    R"html(<form id="filter" class="controls scripted" role="search" aria-label="Filter the schedule">
<label>Search <input type="search" id="filter-text" size="24" placeholder="mark, girth, x length, words"></label>
<label>Side <select id="filter-side"><option value="">all</option>)html";

const char* const filter_middle = R"html(</select></label>
<label>Jig <select id="filter-jig"><option value="">all</option>)html";

const char* const filter_end = R"html(</select></label>
<label><input type="checkbox" id="filter-flagged"> Bridged or flagged only</label>
<label><input type="checkbox" id="filter-open"> Not yet drilled</label>
<button type="reset">Show all</button>
<button type="button" id="all-columns" aria-pressed="false">All columns</button>
<output id="filter-count" aria-live="polite"></output>
</form>
<p class="hint for-narrow">What each column measures, and on which surface, stands with the chosen
hole.</p>
<p class="print-only small">On paper the schedule is short: chords, X, Y, Z, the bit’s angles and the
stack are on the drill sheets; all columns are on the screen and in the schedule’s CSV files.</p>
)html";

const char* const chosen_bar =
    R"html(<div id="bar" class="scripted" role="region" aria-label="Chosen hole in short">
<button type="button" data-step="-1" aria-label="Previous hole">◀</button>
<output id="bar-says"></output>
<p id="bar-words">No hole is chosen.</p>
<label><input type="checkbox" id="bar-drilled" disabled> Drilled</label>
<a href="#hole">Details</a>
<button type="button" data-step="1" aria-label="Next hole">▶</button>
</div>
)html";

}  // namespace sheerlap
