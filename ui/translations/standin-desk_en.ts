<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name>correcting</name>
    <message numerus="yes">
        <source>%n correction(s) kept with this pair are not applied.</source>
        <translation>
            <numerusform>%n correction kept with this pair is not applied.</numerusform>
            <numerusform>%n corrections kept with this pair are not applied.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>standin::ui::ParametersPage</name>
    <message numerus="yes">
        <source>%n pair(s)</source>
        <translation>
            <numerusform>%n pair</numerusform>
            <numerusform>%n pairs</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>, %n hidden</source>
        <translation>
            <numerusform>, %n hidden</numerusform>
            <numerusform>, %n hidden</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>standin::ui::SectionsModel</name>
    <message numerus="yes">
        <source>%n finding(s)</source>
        <translation>
            <numerusform>%n finding</numerusform>
            <numerusform>%n findings</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>, %n editorial</source>
        <translation>
            <numerusform>, %n editorial</numerusform>
            <numerusform>, %n editorial</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Wording: %n sentence(s) differ in meaning</source>
        <translation>
            <numerusform>Wording: %n sentence differs in meaning</numerusform>
            <numerusform>Wording: %n sentences differ in meaning</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>, %n in form only</source>
        <translation>
            <numerusform>, %n in form only</numerusform>
            <numerusform>, %n in form only</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>standin::ui::WordingPage</name>
    <message numerus="yes">
        <source>%n sentence(s) listed</source>
        <translation>
            <numerusform>%n sentence listed</numerusform>
            <numerusform>%n sentences listed</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>, %n that differ in form only hidden</source>
        <translation>
            <numerusform>, %n that differs in form only hidden</numerusform>
            <numerusform>, %n that differ in form only hidden</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>words</name>
    <message numerus="yes">
        <source>%n page(s)</source>
        <translation>
            <numerusform>%n page</numerusform>
            <numerusform>%n pages</numerusform>
        </translation>
    </message>
</context>
</TS>
