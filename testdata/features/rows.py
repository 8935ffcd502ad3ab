"""The rows that most one-feature sheets print: (name, symbol, condition, min, typ, max, unit)."""

GENERAL = "TA=25 °C unless otherwise noted"
HEAD = ["Parameter", "Symbol", "Conditions", "Min", "Typ", "Max", "Unit"]
BASIC = [
    ("Supply current", "I_{DD}", "V_{DD}=3.6 V", None, "2.4", "5.0", "µA"),
    ("Input threshold voltage", "V_{IT}", None, "1.10", "1.20", "1.30", "V"),
    ("Output resistance", "R_{OUT}", "I_{OUT}=1 mA", None, "35", "60", "Ω"),
    ("Response time", "t_{RSP}", "V_{DD}=3.0 V", "4.5", "6.0", "7.5", "ms"),
    ("Offset voltage", "V_{OS}", None, "-3.0", None, "3.0", "mV"),
]
RATINGS = [
    ("Supply voltage", "V_{DD}", "-0.3", "7.0", "V"),
    ("Input voltage", "V_{IN}", "-0.3", "V_{DD}+0.3", "V"),
    ("Power dissipation", "P_{D}", None, "250", "mW"),
    ("Storage temperature", "T_{STG}", "-55", "150", "°C"),
]
OPERATING = [("Supply voltage", "V_{DD}", "1.8", "5.5", "V"), ("Ambient temperature", "T_{A}", "-40", "85", "°C")]
# (name, symbol, [(condition, min, typ, max)], unit)
MERGED = [
    ("On-resistance", "R_{ON}", [("V_{DD}=4.5 V", None, "18", "24"), ("V_{DD}=3.3 V", None, "23", "31"), ("V_{DD}=2.5 V", None, "30", "44")], "mΩ"),
    ("Quiescent current", "I_{Q}", [("No load", None, "1.5", "3.0"), ("No load, T_{A}=85 °C", None, None, "4.5")], "µA"),
    ("Start-up time", "t_{ST}", [(None, "80", "120", "170")], "µs"),
]
# (name, symbol, (min, typ, max) of the first group, of the second group, unit)
GROUPS = [
    ("Output voltage", "V_{OUT}", ("2.970", "3.000", "3.030"), ("2.940", "3.000", "3.060"), "V"),
    ("Supply current", "I_{DD}", (None, "2.4", "4.0"), (None, None, "6.5"), "µA"),
    ("Detection delay time", "t_{DET}", ("8.0", "10.0", "12.0"), ("7.0", "10.0", "14.0"), "ms"),
]
