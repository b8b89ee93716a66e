//! What can be wrong with a flight's figures, by name.

/// Ties each input to its id in the texts (`input-ID`) and its name on the command line.
macro_rules! inputs {
    ($($(#[doc = $doc:literal])* $name:ident $id:literal $called:literal;)*) => {
        /// One of the figures that a flight is worked out from, or one that comes of them.
        #[derive(Clone, Copy, Debug, PartialEq, Eq)]
        pub enum Input { $($(#[doc = $doc])* $name,)* }

        impl Input {
            /// Every input there is.
            pub const ALL: &[Input] = &[$(Input::$name),*];

            /// Its id, as in `input-ID` among the texts.
            pub fn id(self) -> &'static str {
                match self { $(Input::$name => $id,)* }
            }

            /// What the command line calls it.
            fn called(self) -> &'static str {
                match self { $(Input::$name => $called,)* }
            }
        }
    };
}

inputs! {
    /// The pilot's weight.
    Pilot "pilot" "pilot";
    /// The machine's.
    Machine "machine" "machine";
    /// Ballast.
    Ballast "ballast" "ballast";
    /// Fuel in the tank at launch.
    Fuel "fuel" "fuel";
    /// What the wing must carry at least.
    WingLow "wing-low" "wing.low";
    /// What it may carry at most.
    WingHigh "wing-high" "wing.high";
    /// Its range.
    Wing "wing" "wing";
    /// What is in the tank already.
    InTank "in-tank" "in_tank";
    /// Petrol poured in.
    AddFuel "add-fuel" "add_fuel";
    /// Both together.
    TankOrFuel "tank-or-fuel" "`in_tank` or `add_fuel`";
    /// Oil poured in.
    Oil "oil" "oil";
    /// What must be left at landing.
    Reserve "reserve" "reserve";
    /// How long the flight is meant to last.
    FlightTime "flight-time" "flight_time";
    /// Fuel used in an hour.
    Burn "burn" "the burn";
    /// Fuel used in an earlier flight.
    Used "used" "used";
    /// How long that flight was.
    Time "time" "time";
    /// The air's temperature.
    Temperature "temperature" "the temperature";
    /// Its dew point.
    DewPoint "dew-point" "the dew point";
    /// Its pressure.
    Pressure "pressure" "the pressure";
    /// The field's height.
    Elevation "elevation" "the elevation";
    /// What the altimeter is set to.
    Setting "setting" "the altimeter setting";
    /// An altitude in the standard atmosphere.
    Altitude "altitude" "the altitude";
    /// The air's density.
    Density "density" "the density";
    /// The altitude that has it.
    DensityAltitude "density-altitude" "the density altitude";
    /// The mean wind.
    Mean "mean" "mean";
    /// The gusts.
    Gust "gust" "gust";
    /// The limit of the mean wind.
    MeanLimit "mean-limit" "limits.mean";
    /// That of the gusts.
    GustLimit "gust-limit" "limits.gust";
    /// That of gust over mean.
    GustFactorLimit "gust-factor-limit" "limits.gust_factor";
}

impl std::fmt::Display for Input {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str(self.called())
    }
}
