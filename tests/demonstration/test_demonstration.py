"""The demonstration, run as a user runs it."""

from __future__ import annotations

import csv
import os
import re
import signal
import socket
import subprocess
import sys
import uuid
from collections.abc import Callable
from pathlib import Path

import numpy as np
import pytest

FOLDER = Path(__file__).parent
SCRIPT, LIST = FOLDER / "hopper.py", FOLDER / "cutting_list.csv"
PROCESSES = Path("/proc")


def rows() -> list[dict[str, str]]:
    """Read the list that comes with the demonstration."""
    with LIST.open(newline="", encoding="utf-8") as file:
        return list(csv.DictReader(file))


def write(path: Path, rows: list[dict[str, str]]) -> Path:
    """Write a list."""
    with path.open("w", newline="", encoding="utf-8") as file:
        writer = csv.DictWriter(file, rows[0])
        writer.writeheader()
        writer.writerows(rows)
    return path


class Run:
    """One run of the script, told apart from every other process by a name in its environment."""

    def __init__(self, *arguments: str, **environment: str) -> None:
        self.name = f"demonstration-{uuid.uuid4().hex}"
        self.process = subprocess.Popen(
            [sys.executable, "-W", "error", str(SCRIPT), *arguments],
            env={**os.environ, **environment, "NAME_OF_THIS_RUN": self.name},
            stdin=subprocess.DEVNULL,
            stdout=subprocess.PIPE,
            stderr=subprocess.PIPE,
            text=True,
        )

    def __enter__(self) -> Run:
        return self

    def __exit__(self, *_: object) -> None:
        if self.process.poll() is None:
            self.process.send_signal(signal.SIGTERM)
        self.process.communicate(timeout=40)

    def end(self) -> tuple[int, str, str]:
        """Wait for the end; give exit code, output and errors."""
        output, errors = self.process.communicate(timeout=60)
        return self.process.returncode, output, errors

    def left_over(self) -> list[str]:
        """Give the processes that still carry the name of this run; none where they cannot be seen."""
        found = []
        for folder in PROCESSES.glob("[0-9]*"):
            try:
                if self.name.encode() in (folder / "environ").read_bytes():
                    found.append((folder / "cmdline").read_bytes().replace(b"\0", b" ").decode())
            except OSError:
                continue
        return found


def port(text: str) -> int:
    """Find the port that the first line names."""
    match = re.search(r"http://127\.0\.0\.1:([0-9]+)", text)
    assert match is not None
    return int(match[1])


def is_closed(number: int) -> bool:
    """Say whether nobody listens on a port."""
    with socket.socket() as trial:
        return trial.connect_ex(("127.0.0.1", number)) != 0


@pytest.fixture(scope="module")
def shown() -> str:
    """Run the demonstration once; give what it printed."""
    with Run() as run:
        code, output, errors = run.end()
        assert (code, errors) == (0, "")
        assert run.left_over() == []
    assert is_closed(port(output))
    return output


@pytest.fixture(scope="module")
def table(shown: str) -> str:
    """Give what stands above the summary."""
    return shown.partition("WHAT WOULD HAVE GONE WRONG")[0]


@pytest.fixture(scope="module")
def joint(table: str) -> Callable[[str], str]:
    """Look up what the table says of a mark, line after line; the end of a folded cell comes after the verdict."""
    marks = "|".join(row["mark"] for row in rows())
    parts = re.split(rf"^({marks})\b", table, flags=re.MULTILINE)
    found = dict(zip(parts[1::2], (" ".join(text.split()) for text in parts[2::2]), strict=True))
    return found.__getitem__


def test_every_joint_is_there_once(table: str) -> None:
    """Every mark of the list begins exactly one line of the table, in the order of the list."""
    marks = [row["mark"] for row in rows()]
    assert re.findall(rf"^({'|'.join(marks)})\b", table, flags=re.MULTILINE) == marks
    assert f"{len(marks)} joints" in table


def test_it_fits_a_page(shown: str) -> None:
    """No line is wider than 110 characters, and none ends in blanks."""
    assert max(map(len, shown.splitlines())) <= 110
    assert shown == "\n".join(line.rstrip() for line in shown.split("\n"))


def test_the_list_is_about_the_whole_shop() -> None:
    """The list asks all seven questions, in both systems of units, about some sixty joints."""
    listed = rows()
    assert 35 <= len(listed) <= 65
    assert {row["question"] for row in listed} == {
        "size",
        "grind",
        "bevel",
        "groove",
        "group",
        "plan",
        "gauge",
    }
    for question in ("size", "grind", "bevel", "groove", "group", "plan", "gauge"):
        assert {row["units"] for row in listed if row["question"] == question} == {"us", "metric"}


def test_a_square_closed_corner_keeps_its_penetration(joint: Callable[[str], str]) -> None:
    """Ground flush, a closed corner with square edges is left with the 3/32 in it was fused by."""
    # common practice, no source
    assert "The finish leaves 3/32 in of throat; 1/4 in is needed" in joint("H1")
    assert "short if ground" in joint("H1")
    # 70 ksi x (3/32 in)^2/4 on 2 in and a 12 in lever is 25.6 lbf, 15 % more at most.
    assert "2 in long breaks open by hand: at most 29 lbf at the end of a 12 in lever" in joint("H1")


def test_a_blend_as_large_as_the_plate_keeps_it(joint: Callable[[str], str]) -> None:
    """An open corner of equal plates keeps its throat under a blend as large as they are thick, not under a larger."""
    # geometry: with R = t the inner edge is the blend's centre, so all of the blend is t away from it; with R = 3/4 in
    # and t = 5/16 in the blend is R - sqrt(2) (R - t) = 0.750 - 0.619 = 0.131 in away.
    assert "enough" in joint("H4")
    assert "short if ground" in joint("H5")
    assert "leaves 0.131 in of throat" in joint("H5")


def test_sheet_by_the_thinner_part(joint: Callable[[str], str]) -> None:
    """From one side the leg is the thinner sheet; from two sides three quarters of it, in whole millimetres."""
    # common practice, no source (one side); O. W. Blodgett, Design of Weldments, 6.2-7, second-hand (two sides).
    assert "2 mm leg" in joint("S10")  # 3 mm on 2 mm
    assert "3 mm leg, 2 sides" in joint("S9")  # 0.75 x 3 mm = 2.25 mm


def test_metal_grows_with_the_square_of_the_leg(joint: Callable[[str], str]) -> None:
    """The habit's metal is compared by the square of the legs."""
    # geometry: a triangle's area
    assert "4 mm: 4.00 x metal" in joint("S10")  # (4 / 2)^2


def test_a_gap_makes_the_leg_larger_or_is_refused(joint: Callable[[str], str]) -> None:
    """1/8 in of gap is added to the leg; 1/4 in is over what any leg makes up for, and the column is named."""
    # AISC 360-22 Table J2.4: at least 3/16 in on 3/8 in plate. AWS D1.1:2020 7.21.1, second-hand: the leg grows by the
    # gap, up to 3/16 in.
    assert "5/16 in leg" in joint("S12")
    assert "too small" in joint("S12")  # by a habit of 1/4 in
    assert "refused" in joint("S13")
    assert "- gap: " in joint("S13")


def test_an_edge_has_only_so_much_room(joint: Callable[[str], str]) -> None:
    """Along the edge of a 1/4 in strap the weld may be 3/16 in at most."""
    # AISC 360-22 J2.2b(b): 1/16 in less than the thickness of an edge of 1/4 in and more.
    assert "maximum of 3/16 in" in joint("F2")
    assert "cannot be made" in joint("F2")


def test_a_plate_can_fail_before_its_weld(joint: Callable[[str], str]) -> None:
    """Two welds on a web of 3/16 in cannot hang more on it than the web itself carries."""
    # AISC 360-22 J4.1: 45 kip over 4 in of A36 3/16 in thick is 60 ksi, over its 36 ksi whatever the weld.
    assert "cannot be made" in joint("F5")
    assert "Part 2 fails" in joint("F5")


def test_the_process_decides_the_bevel(joint: Callable[[str], str]) -> None:
    """A 45 deg bevel loses 1/8 in at the root with stick, nothing with wire in the horizontal position."""
    # AISC 360-22 Table J2.1: 6 mm + 3.175 mm, in half millimetres; the land is what stays of 12 mm.
    assert re.search("cut 9.5 mm deep, 9.5 mm .*back, 2.5 mm land", joint("G1"))
    assert re.search("cut 6 mm deep, 6 mm back, .*6 mm land", joint("G2"))


def test_the_process_decides_the_groove(joint: Callable[[str], str]) -> None:
    """80 kip over 8 in need 10/33.6 in of throat: as deep with wire, 1/8 in deeper with stick."""
    # AISC 360-22 Table J2.5, E70: 0.80 x 0.60 x 70 = 33.6 ksi, so 0.298 in; Table J2.1: nothing or 1/8 in off.
    assert "cut 5/16 in deep at 45 deg" in joint("K1")
    assert "cut 7/16 in deep at 45 deg" in joint("K2")


def test_a_groove_may_have_to_go_through(joint: Callable[[str], str]) -> None:
    """3500 N/mm need 3500/352.8 = 9.9 mm of throat: no bevel in 10 mm leaves a land."""
    # EN 1993-1-8:2005 4.5.3.2: 0.9 x 490/1.25 = 352.8 N/mm2 square to the throat.
    assert "full depth only" in joint("K6")


def test_plugs_are_counted(joint: Callable[[str], str]) -> None:
    """A 24 mm plug in S275 carries 105.7 kN, so 250 kN need three."""
    # EN 1993-1-8:2005 4.8, from memory: 452.4 mm2 at 430/(sqrt(3) x 0.85 x 1.25) = 233.7 N/mm2.
    assert "3 plugs of 24 mm" in joint("K7")
    assert "105.7 kN each in shear" in joint("K7")


def test_a_hollow_bead_fools_the_leg_gauge(joint: Callable[[str], str]) -> None:
    """Legs of 8 mm have 5.657 mm of throat, and 1.5 mm of hollow leave 4.157 mm of the 5 mm asked for."""
    # geometry: 8/sqrt(2) - 1.5
    assert re.search(r"4\.2 mm of throat; 5 mm\b", joint("W1"))
    assert re.search(r"\bshort\b", joint("W1"))


def test_a_bead_twice_as_large_has_four_times_the_metal(joint: Callable[[str], str]) -> None:
    """Legs of 3/8 in where 3/16 in was asked for."""
    # geometry: metal goes by the square of the leg
    assert "over" in joint("W2")
    assert "4.00 times the metal" in joint("W2")


def test_a_gauge_has_a_tolerance(joint: Callable[[str], str]) -> None:
    """Read to 1/32 in, legs of 3/8 in are 11/32 in at the worst: 0.243 in of throat, of the 0.221 in of 5/16 in."""
    # geometry: (3/8 - 1/32)/sqrt(2) and (5/16)/sqrt(2)
    assert re.search("0.243 in of throat; .*0.221 in", joint("W3"))
    assert "enough" in joint("W3")


@pytest.mark.parametrize(
    ("mark", "column"), [("K3", "process"), ("G7", "groove_angle"), ("G8", "position"), ("S11", "t1, t2")]
)
def test_what_the_rules_do_not_cover_is_refused(joint: Callable[[str], str], mark: str, column: str) -> None:
    """TIG, a tight bevel, submerged arc on a wall and sheet under EN 1993-1-8 are refused by column."""
    # AISC 360-22 Table J2.1 (no TIG, no bevel under 45 deg; SAW flat only); EN 1993-1-8:2005 4.1(1) (from 4 mm).
    assert "refused" in joint(mark)
    assert f"- {column}: " in joint(mark)


def test_the_summary_names_what_would_have_gone_wrong(shown: str) -> None:
    """The summary counts and names every joint in trouble, weighs the metal and ends with the caution."""
    summary = shown.partition("WHAT WOULD HAVE GONE WRONG")[2]
    for line in re.findall(r"^ +([0-9]+)  .*: (.*)$", summary, flags=re.MULTILINE):
        assert int(line[0]) == len(line[1].split(", "))
    for mark in ("H1", "H5", "H12", "F2", "F5", "S11", "S12", "S13", "G7", "G8", "W1", "W2"):
        assert re.search(rf"\b{mark}\b", summary)
    assert not re.search(r"\b(H2|H4|G1|G2|S9|S10|P1|P2|P3|P4|W3)\b", summary)
    metal = re.search(r"joints take ([0-9.]+) kg; .* they take ([0-9.]+) kg, ([0-9]+) % less", summary)
    assert metal is not None
    assert float(metal[3]) == pytest.approx(100 * (1 - float(metal[2]) / float(metal[1])), abs=1.0)
    assert summary.rstrip().splitlines()[-1].startswith("Estimates for planning only: confirm them by the local code")


def test_the_fillets_are_priced(shown: str, joint: Callable[[str], str]) -> None:
    """Each wire has its metal, hours and cost, which add up; the metal of cored wire is worked out by hand."""
    priced = shown.partition("The fillets as sized")[2].splitlines()[2:]
    found = {line[2:21].strip(): line for line in priced if line.startswith("  ")}
    assert list(found) == ["SMAW, E7018", "FCAW-G, E71T-1", "GMAW, ER70S-6", "all"]

    def figures(name: str) -> list[float]:
        """First figure of each cell: metal, to buy, clock, cost."""
        cells = (found[name][start : start + 21] for start in range(21, 105, 21))
        return [float(re.findall(r"[0-9.]+", cell)[0]) for cell in cells]

    for column, total in enumerate(figures("all")):
        assert sum(figures(name)[column] for name in list(found)[:-1]) == pytest.approx(total, abs=0.02)
    # S3 (one side), S4 (two), 6 in long: half the leg squared, at 7850 kg/m3 (common practice), a tenth more.
    metal = 0.0
    for mark, sides in (("S3", 1), ("S4", 2)):
        leg = re.search(r"([0-9]+)/([0-9]+) in leg", joint(mark))
        assert leg is not None
        metal += sides * (25.4 * int(leg[1]) / int(leg[2])) ** 2 / 2 * 6 * 25.4 * 7.85e-6 * 1.1
    assert figures("FCAW-G, E71T-1")[0] == pytest.approx(metal, abs=0.006)


@pytest.fixture(scope="module")
def ways(table: str) -> Callable[[str], dict[str, tuple[str, ...]]]:
    """Look up the ways of a planned joint, best first: place, size, filler, clock, turn, chance of a short throat."""

    def found(mark: str) -> dict[str, tuple[str, ...]]:
        under = re.split(r"^(?=\S)", table.partition(f"\n{mark} ")[2], flags=re.MULTILINE)[0].splitlines()
        read: dict[str, tuple[str, ...]] = {}
        for line in under[2:]:
            if re.match(r" {5}[0-9]+ {3}", line):
                cells = [line[start:end].strip() for start, end in ((5, 9), (36, 68), (68, 78), (78, 88), (88, 98))]
                name = line[9:36].strip()
                read[name] = (*cells, line[98:].strip())
            elif read and line.startswith(" " * 36):
                place, size, *others = read[name]
                read[name] = (place, f"{size} {line.strip()}", *others)
        return read

    return found


def test_ways_stand_in_order(ways: Callable[[str], dict[str, tuple[str, ...]]], joint: Callable[[str], str]) -> None:
    """The ways of every planned joint stand by their place, and the first is the one that is recommended."""
    for mark in ("P1", "P2", "P3", "P4"):
        found = ways(mark)
        places = [int(cells[0]) for cells in found.values()]
        assert places == sorted(places)
        assert places[0] == 1
        assert len(places) >= 3
        assert f"Best way: {next(iter(found))}. Welding costs" in joint(mark)


def test_ways_to_weld_a_ring(ways: Callable[[str], dict[str, tuple[str, ...]]], joint: Callable[[str], str]) -> None:
    """480 kN across 200 mm: fillets large enough that half a millimetre off either leg leaves the throat."""
    # EN 1993-1-8:2005 4.5.3.2: 480000/(2 x 200) = 1200 N/mm a side, at 45 deg to the throat: sigma = tau =
    # 1200/(sqrt(2) a), so 2 sigma = 1697/a <= 490/(0.9 x 1.25) = 435.6 N/mm2: a = 3.896 mm. As legs 5.510 mm, with
    # the tolerance 6.010: as a throat 4.250 mm, in halves of a millimetre 4.5.
    place, size, filler, *_, chance = ways("P1")["fillet both sides"]
    assert "4.5 mm throat, both sides" in size
    # Metal of legs 4.5 sqrt(2) mm: 2 x 40.5/2 mm2 x 200 mm x 7.85e-6 kg/mm3 = 0.0636 kg.
    assert filler == "0.064 kg"
    assert chance == "0 %"
    assert int(place) > 1
    # A pull on one side bends its root open (EN 1993-1-8 4.12), so that way comes last by far.
    assert list(ways("P1"))[-1] == "fillet one side"
    assert "partial groove enough" in joint("P1")


def test_ways_to_weld_a_rib(ways: Callable[[str], dict[str, tuple[str, ...]]], joint: Callable[[str], str]) -> None:
    """The least size, 1/8 in on 1/4 in plate, and 1/32 in of tolerance: 3/16 in; gaps leave out half of it."""
    # AISC 360-22 Table J2.4: 1/8 + 1/32 = 5/32 in, to the next sixteenth 3/16 in.
    found = ways("P2")
    # 2 x 12 in x (3/16 in)^2/2 x 0.2836 lb/in3 (7850 kg/m3) = 0.120 lb
    assert found["fillet both sides"][2] == "0.120 lb"
    size, filler = found["fillet intermittent"][1:3]
    # 20 kip on 6 in of 12, on both sides: 1.67 kip/in of 1.5 x 1.392 x 2 = 4.18 kip/in that 1/8 in carries.
    assert "2 in every 6 in" in size
    # Three segments of 2 in are half of the line.
    assert filler == "0.060 lb"
    # One weld across the pull opens from its root, and nobody said that the rib is held (common practice).
    assert "fillet one side: The load opens the weld from its root." in joint("P2")


def test_ways_to_make_a_ground_corner(
    ways: Callable[[str], dict[str, tuple[str, ...]]], joint: Callable[[str], str]
) -> None:
    """5 mm under a flush finish: what the 2 mm of proven fusion leave is bevelled, opened, or welded from inside."""
    found = ways("P3")
    # A bevel of 5 - 2 + 0.5 mm (its tolerance), at 45 deg as far back; GMAW, flat: nothing is taken off at the root
    # (AISC 360-22 Table J2.1). Metal: 3.5^2/2 mm2 x 1500 mm x 7.85e-6 kg/mm3 = 0.072 kg.
    assert found["bevelled edge"][1:3] == ("bevel 3.5 mm deep, setback 3.5 mm", "0.072 kg")
    # Filled to the sharp corner, 8 x 8 mm: 0.754 kg; covered by half, 4 x 8 mm: 0.377 kg.
    assert found["open corner"][2] == "0.754 kg"
    assert found["half open corner"][2] == "0.377 kg"
    # 5 sqrt(2) + 0.5 mm (tolerance of the legs) = 7.6 mm, in whole millimetres: 8^2/2 mm2.
    assert found["fillet inside"][1:3] == ("8 mm leg inside", "0.377 kg")
    # No spread takes it under: each has room for the whole tolerance.
    assert {cells[-1] for cells in found.values()} == {"0 %"}
    assert "Refused: square edge: the throat is 2 mm as welded" in joint("P3")
    assert "Refused: face left: The weld stands out from the finish, which is to be flush." in joint("P3")


def test_ways_to_weld_a_flange(ways: Callable[[str], dict[str, tuple[str, ...]]], joint: Callable[[str], str]) -> None:
    """80 kip over 8 in: the least groove on both sides, 1/4 in and its tolerance, at the shop's rate and prices."""
    # AISC 360-22 Table J2.5: 10 kip/in in tension, 0.80 x 0.60 x 70 = 33.6 ksi: 0.298 in of throat, 0.149 a side;
    # Table J2.3: 1/4 in at least on 3/4 in. With 1/32 in of tolerance 9/32 in; wire, horizontal: nothing off (J2.1).
    first, cells = next(iter(ways("P4").items()))
    assert first == "partial groove"
    assert cells[1].startswith("double bevel 9/32 in deep")
    # 2 x 8 in x (9/32 in)^2/2 x 0.2836 lb/in3 = 0.179 lb, at 8 lb/h for 35 % of the clock 0.0641 h = 3.85 min; two
    # faces of 8 in bevelled at 300 mm/min take 1.35 min more.
    assert cells[2:4] == ("0.179 lb", "5.2 min")
    # The fillets instead: 1/4 + 1/32 in, to the sixteenth 5/16 in: 2 x 8 in x (5/16 in)^2/2 x 0.2836 = 0.222 lb.
    assert ways("P4")["fillet both sides"][2] == "0.222 lb"
    cost = re.search(r"costs ([0-9.]+) to ([0-9.]+) USD", joint("P4"))
    assert cost is not None
    # 58 x 0.0641 = 3.72; wire at 1.95 from all of it used (0.35) to 80 % (0.44); gas at 0.14 for 0.0224 h of arc,
    # from none to 50 ft3/h (0.16).
    assert 3.72 + 0.35 < float(cost[1]) < float(cost[2]) < 3.72 + 0.44 + 0.16


def test_a_process_the_shop_has_no_figures_for_is_planned_too(tmp_path: Path) -> None:
    """TIG on the bolt ring: the ways keep their metal, and have neither a time nor a cost without a rate."""
    listed = [{**row, "process": "GTAW"} for row in rows() if row["mark"] == "P3"]
    with Run(str(write(tmp_path / "tig.csv", listed))) as run:
        code, output, errors = run.end()
    assert (code, errors) == (0, "")
    # 8^2/2 mm2 x 1500 mm x 7.85e-6 kg/mm3, as with wire; no deposition rate of TIG is on record.
    assert re.search(r"fillet inside +8 mm leg inside +0.377 kg +- ", output)
    assert "costs" not in output


def test_one_size_up_is_priced(tmp_path: Path) -> None:
    """Two ribs, both sides: 3 mm against 4 mm over 400 mm, 1/8 in against 3/16 in over 12 in."""
    # geometry: half the square of the leg; 7850 kg/m3 (common practice, no source), a tenth more than drawn
    metal = 7.85e-6 * 1.1
    sized = metal * (400 * 3.0**2 + 304.8 * 3.175**2)
    up = metal * (400 * 4.0**2 + 304.8 * 4.7625**2)
    # Wire of 1.2 mm at 9 m/min, 95 % of it deposited, for 35 % of the clock.
    arc = (up - sized) / (np.pi / 4 * 1.2**2 * 9000 * 7.85e-6 * 0.95)  # min
    hours = arc / 0.35 / 60
    # 58 an hour, wire at 1.15 a pound, 16 L/min of gas at 0.14 a cubic foot
    price = 58 * hours + (up - sized) / 0.95 / 0.45359237 * 1.15 + 16 * arc / 28.316847 * 0.14
    listed = [row for row in rows() if row["mark"] in ("S1", "S9")]
    with Run(str(write(tmp_path / "ribs.csv", listed))) as run:
        code, output, errors = run.end()
    assert (code, errors) == (0, "")
    said = re.search(
        r"would take ([0-9.]+) kg of weld metal\. The sizes above save ([0-9.]+) kg of metal \(([0-9]+) %\),"
        r" ([0-9.]+) h of time, ([0-9.]+) USD",
        " ".join(output.split()),
    )
    assert said is not None
    expected = (up, up - sized, 100 * (1 - sized / up), hours, price)
    for number, value, within in zip(said.groups(), expected, (0.006, 0.006, 0.6, 0.006, 0.006), strict=True):
        assert float(number) == pytest.approx(value, abs=within)


def broken(**cells: str) -> Callable[[list[dict[str, str]]], None]:
    """Spoil cells of the second joint."""
    return lambda listed: listed[1].update(cells)


@pytest.mark.parametrize(
    ("spoil", "said"),
    [
        (
            broken(question="grid"),
            r"line 3 \(H2\): question must be one of size, grind, bevel, groove, group, plan, gauge; it is 'grid'",
        ),
        (broken(mark="H1"), r"line 3: mark H1 is there twice"),
        (broken(mark=" "), r"line 3: the line has no mark"),
        (broken(habit="1/4 in"), r"line 3 \(H2\): column habit does not apply to the question grind"),
        (
            lambda listed: listed[14].update(sides="3"),
            r"line 16 \(S1\): sides must be 1 or 2; it is '3'",
        ),
        (lambda listed: listed[14].update(habit="1/0 in"), r"line 16 \(S1\): habit must be a leg such as"),
        (lambda listed: listed[14].update(length=""), r"line 16 \(S1\): habit requires the length"),
        (lambda listed: [row.pop("question") for row in listed], r"no column question"),
    ],
)
def test_a_broken_list_is_said_to_be(tmp_path: Path, spoil: Callable[[list[dict[str, str]]], None], said: str) -> None:
    """A list that cannot be read ends the run before the service starts, with file, line, mark and fault."""
    listed = rows()
    spoil(listed)
    with Run(str(write(tmp_path / "spoilt.csv", listed))) as run:
        code, output, errors = run.end()
    assert (code, output) == (2, "")
    assert errors.startswith("spoilt.csv")
    assert re.search(said, errors)
    assert errors.count("\n") == 1


@pytest.mark.parametrize(
    ("content", "said"),
    [(b"", "no column part"), (b"part,mark,where,question,units\n", "holds no joints"), (b"\xff\xfe", "spoilt.csv: ")],
)
def test_a_file_that_is_no_list(tmp_path: Path, content: bytes, said: str) -> None:
    """An empty file, a bare heading and a file that is no text are told apart."""
    path = tmp_path / "spoilt.csv"
    path.write_bytes(content)
    with Run(str(path)) as run:
        code, output, errors = run.end()
    assert (code, output) == (2, "")
    assert said in errors
    assert "Traceback" not in errors


def test_more_cells_than_columns(tmp_path: Path) -> None:
    """A stray comma is found, not read past."""
    path = tmp_path / "spoilt.csv"
    path.write_text("part,mark,where,question,units\nhopper,H1,corner,grind,us,1/4 in\n", encoding="utf-8")
    with Run(str(path)) as run:
        code, _, errors = run.end()
    assert code == 2
    assert "line 2: the line has more cells than there are columns" in errors


def test_a_value_the_service_refuses_is_a_line(tmp_path: Path) -> None:
    """A thickness without a unit is refused by the service: the run goes on and names the column."""
    listed = rows()[:3]
    listed[1]["t2"] = "6"
    with Run(str(write(tmp_path / "list.csv", listed))) as run:
        code, output, errors = run.end()
    assert (code, errors) == (0, "")
    assert re.search(r"^H2 .* refused$", output, flags=re.MULTILINE)
    assert "- t2: " in output
    assert re.search(r"^H3 ", output, flags=re.MULTILINE)


@pytest.mark.parametrize(("number", "code"), [(signal.SIGINT, 130), (signal.SIGTERM, 143)])
def test_stopped_in_the_middle(tmp_path: Path, number: signal.Signals, code: int) -> None:
    """Ctrl-C or a request to end, while joints are being asked about, stops the service as well."""
    many = [{**row, "mark": f"{row['mark']}.{copy}"} for copy in range(60) for row in rows()]
    with Run(str(write(tmp_path / "long.csv", many))) as run:
        assert run.process.stdout is not None
        first = run.process.stdout.readline()
        while not run.process.stdout.readline().startswith("H3.0"):
            assert run.process.poll() is None
        assert not is_closed(port(first))
        if PROCESSES.is_dir():
            assert len(run.left_over()) >= 3  # script, gunicorn and a worker: an empty list later means something
        run.process.send_signal(number)
        ended, output, errors = run.end()
        assert ended == code
        assert "H1.59" not in output
        assert "Traceback" not in errors
        assert run.left_over() == []
    assert is_closed(port(first))


def test_the_first_answer_is_printed_before_the_last_is_asked() -> None:
    """A joint is printed as soon as it is answered, while the service still answers others."""
    with Run() as run:
        assert run.process.stdout is not None
        while not run.process.stdout.readline().startswith("H1"):
            assert run.process.poll() is None
        assert run.process.poll() is None


def test_a_service_that_does_not_start_shows_its_log() -> None:
    """When gunicorn cannot start, the run ends with what it said and leaves nothing behind."""
    with Run(WEB_CONCURRENCY="many") as run:
        code, output, errors = run.end()
        assert (code, output) == (1, "")
        assert "the service ended at once" in errors
        assert "invalid literal for int() with base 10: 'many'" in errors
        assert run.left_over() == []
