//! The options of the server.

use std::path::PathBuf;

use clap::Args;

/// `evenswath serve`
#[derive(Debug, Args)]
#[command(
    after_help = "Examples:\n  evenswath serve --folder my-notebook\n  evenswath serve --folder my-notebook --on-network\n  evenswath serve --folder my-notebook --on-network --certificate barn.pem --key barn-key.pem"
)]
pub struct ServeArgs {
    /// The folder that the notebook is kept in
    #[arg(long, value_name = "FOLDER")]
    pub folder: PathBuf,

    /// The port to listen on; 0 for any that is free
    #[arg(long, value_name = "PORT", default_value_t = server::PORT)]
    pub port: u16,

    /// Listen to the network and not to this machine alone; phones pair with a secret
    #[arg(long)]
    pub on_network: bool,

    /// A name that the server goes by, for the network or a proxy; may be given again
    #[arg(long, value_name = "NAME")]
    pub name: Vec<String>,

    /// A file with the pairing secret in its first line, 16 letters and digits or more; without it one is made and shown
    #[arg(long, value_name = "FILE")]
    pub pairing_secret_file: Option<PathBuf>,

    /// The certificate for HTTPS in PEM form, with those it rests on
    #[arg(long, value_name = "FILE", requires = "key")]
    pub certificate: Option<PathBuf>,

    /// The private key of the certificate in PEM form
    #[arg(long, value_name = "FILE", requires = "certificate")]
    pub key: Option<PathBuf>,

    /// The folder of the app's files, instead of those in this program
    #[arg(long, value_name = "FOLDER")]
    pub app: Option<PathBuf>,

    /// Write a line for each request to standard error; nothing about a person is in it
    #[arg(long)]
    pub log: bool,
}
